import { CodeMark } from '@/app/_shared/codes/code-mark';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import type { TabletAddress } from './tablet-addresses';
import styles from './trust.module.css';

interface TrustStepsProps {
  readonly address: TabletAddress;
  readonly others: readonly TabletAddress[];
  readonly fingerprint: readonly string[];
}

/** Once per tablet: open this page there, fetch the certificate, compare it, install it, open the https address. */
export function TrustSteps({ address, others, fingerprint }: TrustStepsProps) {
  return (
    <ol className={styles.steps}>
      <li>
        <Panel title="1. Open this page on the tablet">
          <div className={styles.withCode}>
            <CodeMark kind="qr" text={address.trust} sideMm={38} />
            <div className="stack-tight">
              <p>Point the tablet’s camera at the code, or type the address:</p>
              <p className={styles.address}>{address.trust}</p>
            </div>
          </div>
        </Panel>
      </li>
      <li>
        <Panel title="2. Fetch the certificate there">
          <div className="stack">
            <div>
              {/* A file and no page: an ordinary link, followed by the browser itself. */}
              <a className={styles.fetch} href="/trust/certificate">
                Fetch the certificate
              </a>
            </div>
            <p>
              The tablet may say that it could let others read what it sends. That is what any authority could
              do; this one’s key stays in the data folder of the machine that runs Edgekeep. Keep copies of
              that folder where nobody else can read them.
            </p>
          </div>
        </Panel>
      </li>
      <li>
        <Panel title="3. Compare the fingerprint">
          <div className="stack">
            <p>
              On the way over plain http somebody could have put another in its place. Open the details of the
              certificate on the tablet: its SHA-256 fingerprint must be the one that the machine running
              Edgekeep printed when it started and shows on its own screen, on this page. Do not compare with
              what the tablet shows of this page. If they differ, do not install it.
            </p>
            <p className={styles.fingerprint}>
              {fingerprint.map((line) => (
                <span key={line}>{line}</span>
              ))}
            </p>
          </div>
        </Panel>
      </li>
      <li>
        <Panel title="4. Install it as an authority">
          <Devices />
        </Panel>
      </li>
      <li>
        <Panel title="5. Open the https address">
          <div className={styles.withCode}>
            <CodeMark kind="qr" text={address.bench} sideMm={38} />
            <div className="stack-tight">
              <p className={styles.address}>{address.bench}</p>
              <p>
                There must be no warning. Choose your name, open the bench once, then use the browser’s menu
                to put it on the home screen.
              </p>
              {others.length > 0 ? (
                <p className="fine">
                  Also reached at {others.map(({ bench }) => bench).join(', ')}. Keep to one: each address
                  keeps its own counts on the device.
                </p>
              ) : null}
              <div>
                <ButtonLink href={address.bench}>Open the bench there</ButtonLink>
              </div>
            </div>
          </div>
        </Panel>
      </li>
    </ol>
  );
}

/** In general words: the menus differ between makers and years. */
function Devices() {
  return (
    <dl className={styles.devices}>
      <dt>A tablet or phone with “Security” in its settings</dt>
      <dd>
        Settings, Security (there may be “Encryption and credentials” or “More security” below it), Install a
        certificate, CA certificate; then choose the file just fetched. It asks for the screen lock, and for
        one to be set if there is none.
      </dd>
      <dt>A tablet or phone with “Profiles” in its settings</dt>
      <dd>
        Fetch the certificate in the browser that came with the device and allow the profile. Settings,
        General, Device management or Profiles: install it. Then Settings, General, About, Certificate trust:
        switch it on for this authority. Without the last step it is installed and not trusted.
      </dd>
      <dt>A computer</dt>
      <dd>
        Open the fetched file, or the browser’s settings under Privacy and security, Certificates,
        Authorities: import it, trusted for websites and nothing else.
      </dd>
      <dt>To take it back</dt>
      <dd>
        Remove “Edgekeep shop authority” in the same place, above all before a device is sold or given away.
      </dd>
    </dl>
  );
}
