'use client';

import type { ReactNode } from 'react';
import styles from './bench.module.css';

interface ChoiceSheetProps<T extends string> {
  readonly title: string;
  /** What a reader hears of the sheet, where the title alone does not say it. */
  readonly label?: string;
  readonly lead?: string;
  readonly choices: readonly { readonly code: T; readonly label: string }[];
  readonly onChoose: (code: T) => void;
  readonly onBack: () => void;
  /** What stands below the answers. */
  readonly children?: ReactNode;
}

/** One question at the vise, its answers as large keys, and the way back: answered in one tap. */
export function ChoiceSheet<T extends string>(props: ChoiceSheetProps<T>) {
  const { title, label = title, lead, choices, onChoose, onBack, children } = props;
  return (
    <section className={styles.sheet} aria-label={label}>
      <h2>{title}</h2>
      {lead === undefined ? null : <p>{lead}</p>}
      <div className={styles.causes}>
        {choices.map((choice) => (
          <button key={choice.code} type="button" onClick={() => onChoose(choice.code)}>
            {choice.label}
          </button>
        ))}
        <button type="button" onClick={onBack}>
          Back
        </button>
      </div>
      {children}
    </section>
  );
}
