/** One box for the hand scanner: a plain GET to /crib/go, so that it works before any script has loaded. */
import { CameraGo } from '@/app/_shared/scan/camera-go';
import { Button } from '@/app/_shared/ui';
import styles from './crib.module.css';

export function ScanForm({ unknown }: { readonly unknown?: string | undefined }) {
  return (
    <form action="/crib/go" method="get" className={styles.scan}>
      <label htmlFor="crib-scan">Scan a tool, a kit slip or a job line</label>
      <div className={styles.scanRow}>
        <input
          id="crib-scan"
          name="scan"
          type="text"
          required
          // biome-ignore lint/a11y/noAutofocus: a hand scanner types into whatever has the focus
          autoFocus
          autoComplete="off"
          autoCapitalize="characters"
          autoCorrect="off"
          spellCheck={false}
          enterKeyHint="go"
          aria-describedby={unknown === undefined ? undefined : 'crib-unknown'}
        />
        <Button type="submit" tone="primary">
          Go
        </Button>
      </div>
      <CameraGo action="/crib/go" name="scan" />
      {unknown === undefined ? null : (
        <p id="crib-unknown" role="alert" className={styles.unknown}>
          <b>{unknown}</b> is neither a tool, a kit nor a job line in the record. Check the mark, or type it.
        </p>
      )}
    </form>
  );
}
