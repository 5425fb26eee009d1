import type { Route } from 'next';
import Link from 'next/link';
import { dayText } from '@/app/_shared/format';
import { EmptyState, Panel, Table, ToolId } from '@/app/_shared/ui';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import paper from '../../_parts/paper.module.css';
import { CertificateUpload } from './certificate-upload';
import { conformityWords, errorWords, limitWords, resultWords, uncertaintyWords } from './evidence-words';

interface EvidencePanelProps {
  readonly toolId: string;
  readonly evidence: readonly GaugeEvidence[];
  /** The certificate by which it stands. */
  readonly inForce: GaugeEvidence | undefined;
  /** By entry: the recall of the master that a check rests on, which counts no more. */
  readonly doubtedIn: ReadonlyMap<string, string>;
}

/** As many as are looked at; the rest is folded away. */
const SHOWN = 6;

/** Every certificate and every check, newest first. */
export function EvidencePanel({ toolId, evidence, inForce, doubtedIn }: EvidencePanelProps) {
  const newest = evidence.toReversed();
  const latest = evidence.findLast(({ kind }) => kind === 'calibration');
  const inForceId = inForce?.asLeft === 'in' ? inForce.entryId : undefined;
  return (
    <Panel title="Certificates and checks">
      <div className="stack">
        <EvidenceTable rows={newest.slice(0, SHOWN)} {...{ inForceId, doubtedIn }} />
        {newest.length > SHOWN ? (
          <>
            <details className="no-print">
              <summary>Earlier: {newest.length - SHOWN}</summary>
              <EvidenceTable rows={newest.slice(SHOWN)} {...{ inForceId, doubtedIn }} />
            </details>
            <div className={paper.printed}>
              <EvidenceTable rows={newest.slice(SHOWN)} {...{ inForceId, doubtedIn }} />
            </div>
          </>
        ) : null}
        {latest !== undefined && latest.file === null ? (
          <div className="no-print">
            <CertificateUpload toolId={toolId} calibrationId={latest.entryId} />
          </div>
        ) : null}
      </div>
    </Panel>
  );
}

function EvidenceTable({
  rows,
  inForceId,
  doubtedIn,
}: {
  readonly rows: readonly GaugeEvidence[];
  readonly inForceId: string | undefined;
  readonly doubtedIn: ReadonlyMap<string, string>;
}) {
  return (
    <Table
      caption="Certificates and checks, newest first"
      rows={rows}
      rowKey={({ entryId }) => entryId}
      empty={
        <EmptyState title="Nothing on record yet">
          Record its last certificate: the verdict and the due day are enough.
        </EmptyState>
      }
      columns={[
        { key: 'day', header: 'On', lead: true, cell: ({ onDay }) => dayText(onDay) },
        {
          key: 'what',
          header: 'What',
          cell: (one) => (
            <>
              <What one={one} />
              {one.entryId === inForceId ? <div className="fine">in force</div> : null}
            </>
          ),
        },
        {
          key: 'result',
          header: 'Result',
          cell: (one) => <Result one={one} recallId={doubtedIn.get(one.entryId)} />,
        },
        { key: 'figures', header: 'Figures', cell: (one) => <Figures one={one} /> },
        { key: 'file', header: 'File', cell: (one) => <File one={one} /> },
      ]}
    />
  );
}

function What({ one }: { readonly one: GaugeEvidence }) {
  if (one.kind === 'interim')
    return one.againstToolId === null ? (
      <>check in the shop</>
    ) : (
      <>
        check
        <On masterId={one.againstToolId} />
      </>
    );
  const { certificate = '', laboratory = '' } = one.calibration ?? {};
  const words = [certificate === '' ? 'calibration' : certificate, laboratory].filter(Boolean).join(', ');
  return (
    <>
      {words}
      {one.againstToolId === null ? null : <On masterId={one.againstToolId} />}
    </>
  );
}

function On({ masterId }: { readonly masterId: string }) {
  return (
    <>
      {' '}
      on{' '}
      <Link href={`/gauges/${encodeURIComponent(masterId)}` as Route} prefetch={false}>
        <ToolId id={masterId} />
      </Link>
    </>
  );
}

function Result({ one, recallId }: { readonly one: GaugeEvidence; readonly recallId: string | undefined }) {
  const sure = conformityWords(one);
  return (
    <>
      {resultWords(one)}
      {sure === '' ? null : <div className="fine">{sure}</div>}
      {recallId === undefined ? null : (
        <div className="fine">
          its master was found out:{' '}
          <Link href={`/recalls/${encodeURIComponent(recallId)}`} prefetch={false}>
            recall {recallId}
          </Link>
        </div>
      )}
    </>
  );
}

function Figures({ one }: { readonly one: GaugeEvidence }) {
  const [row] = one.calibration?.features ?? [];
  if (row === undefined) return <>none</>;
  const same = row.asLeftError === row.asFoundError || row.asLeftError === null;
  return (
    <>
      {row.feature}: {errorWords(row, row.asFoundError)}
      {same ? '' : `, left ${errorWords(row, row.asLeftError)}`}
      <span className="fine">
        {' '}
        {limitWords(row)}, {uncertaintyWords(row)}
      </span>
    </>
  );
}

function File({ one }: { readonly one: GaugeEvidence }) {
  if (one.file === null) return <>none</>;
  const name = one.file.name === '' ? 'certificate' : one.file.name;
  return (
    <a href={`/gauges/files/${one.file.sha256}`} download>
      {name}
    </a>
  );
}
