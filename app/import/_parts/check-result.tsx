import { count, whole } from '@/app/_shared/format';
import { Button, KeyValue } from '@/app/_shared/ui';
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
  return (
    <>
      <p className={styles.verdict}>{checkSentence(check)}</p>
      <KeyValue
        items={[
          { label: 'New', value: count(newRows, 'row') },
          { label: 'Already there', value: count(alreadyThere, 'row') },
          { label: 'Left out', value: count(leftOut, 'row') },
          { label: 'Errors', value: errorCount === 0 ? 'none' : whole(errorCount) },
        ]}
      />
      <div className="cluster">
        {newRows > 0 || errorCount > 0 ? (
          <Button tone="primary" disabled={errorCount > 0} onClick={importIt}>
            Import {count(newRows, 'row')}
          </Button>
        ) : null}
        <Button onClick={putDown}>Choose another file</Button>
      </div>
    </>
  );
}
