import type { CutOperation } from '@/lib/shop/vocabulary';
import styles from './bench.module.css';

interface OperationTabsProps {
  readonly operation: CutOperation;
  readonly onChoose: (operation: CutOperation) => void;
}

/** Cone or thread: two large keys, the one in hand filled. */
export function OperationTabs({ operation, onChoose }: OperationTabsProps) {
  return (
    <fieldset className={styles.tabs}>
      <legend className="vh">What is being cut</legend>
      {(['cone', 'thread'] as const).map((known) => (
        <button key={known} type="button" aria-pressed={operation === known} onClick={() => onChoose(known)}>
          {known === 'cone' ? 'Cone' : 'Thread'}
        </button>
      ))}
    </fieldset>
  );
}
