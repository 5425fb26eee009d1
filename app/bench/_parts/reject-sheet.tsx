'use client';

import { type CutOperation, REJECT_CAUSES, type RejectCause } from '@/lib/shop/vocabulary';
import styles from './bench.module.css';

const OF_CONE: readonly RejectCause[] = ['cone-finish', 'cone-angle', 'nicked', 'other'];
const OF_THREAD: readonly RejectCause[] = [
  'go-tight',
  'not-go-runs-on',
  'torn-thread',
  'crooked',
  'length',
  'nicked',
  'other',
];

interface RejectSheetProps {
  readonly operation: CutOperation;
  readonly onCause: (cause: RejectCause) => void;
  readonly onBack: () => void;
}

/** Why an end was refused: one tap. */
export function RejectSheet({ operation, onCause, onBack }: RejectSheetProps) {
  const codes = operation === 'cone' ? OF_CONE : OF_THREAD;
  const causes = REJECT_CAUSES.filter(({ code }) => codes.includes(code));
  return (
    <section className={styles.sheet} aria-label="Why the end is rejected">
      <h2>What is wrong with it?</h2>
      <div className={styles.causes}>
        {causes.map(({ code, label }) => (
          <button key={code} type="button" onClick={() => onCause(code)}>
            {label}
          </button>
        ))}
        <button type="button" onClick={onBack}>
          Back
        </button>
      </div>
    </section>
  );
}
