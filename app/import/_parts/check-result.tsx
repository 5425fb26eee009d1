import { count, whole } from '@/app/_shared/format';
import { Button } from '@/app/_shared/ui';
import type { ImportCheck } from '@/db/commands/import-file';
import { checkSentence } from './check-sentence';
import styles from './import.module.css';

interface CheckResultProps {
  readonly check: ImportCheck;
  readonly importIt: () => void;
  readonly putDown: () => void;
}

/** What importing the file would do, in one sentence and four counts, and the one press that does it. */
export function CheckResult({ check, importIt, putDown }: CheckResultProps) {
  const { newRows, alreadyThere, leftOut, errorCount } = check;
  const counts = [
    ['New', newRows],
    ['Already there', alreadyThere],
    ['Left out', leftOut],
    ['Errors', errorCount],
  ] as const;
  return (
    <>
      <p className={styles.verdict}>{checkSentence(check)}</p>
      <dl className={styles.counts}>
        {counts.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd className="num">{value === 0 ? 'none' : whole(value)}</dd>
          </div>
        ))}
      </dl>
      <div className="cluster">
        {newRows > 0 || errorCount > 0 ? (
          <Button tone="primary" disabled={errorCount > 0} onClick={importIt}>
            {errorCount > 0 ? 'Import' : `Import ${count(newRows, 'row')}`}
          </Button>
        ) : null}
        <Button onClick={putDown}>Choose another file</Button>
      </div>
    </>
  );
}
