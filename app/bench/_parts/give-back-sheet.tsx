'use client';

import type { ReturnCondition } from '@/lib/shop/noun';
import styles from './bench.module.css';

const CONDITIONS: readonly { readonly value: ReturnCondition; readonly label: string }[] = [
  { value: 'ok', label: 'In order' },
  { value: 'dull', label: 'Dull' },
  { value: 'damaged', label: 'Chipped' },
  { value: 'unsure', label: 'Set aside' },
];

interface GiveBackSheetProps {
  readonly toolId: string;
  readonly onCondition: (condition: ReturnCondition) => void;
  readonly onBack: () => void;
}

/** Back to the crib, its condition in one tap. What was counted on it goes with it. */
export function GiveBackSheet({ toolId, onCondition, onBack }: GiveBackSheetProps) {
  return (
    <section className={styles.sheet} aria-label={`Give ${toolId} back`}>
      <h2>Give {toolId} back</h2>
      <div className={styles.causes}>
        {CONDITIONS.map(({ value, label }) => (
          <button key={value} type="button" onClick={() => onCondition(value)}>
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
