'use client';

import { Cautions } from '@/app/_shared/cautions';
import { STOPS, type Stop } from '@/lib/shop/bench-input';
import styles from './bench.module.css';

interface StopSheetProps {
  readonly toolId: string;
  readonly onStop: (how: Stop) => void;
  readonly onBack: () => void;
}

/** Stop: one tap, no blame. The tool is set aside for a look, and its pieces are asked for where some broke off. */
export function StopSheet({ toolId, onStop, onBack }: StopSheetProps) {
  return (
    <section className={styles.sheet} aria-label={`Stop ${toolId}`}>
      <h2>Stop {toolId}</h2>
      <p>It is set aside for a look. Nobody is asked whose fault it was.</p>
      <div className={styles.causes}>
        {STOPS.map(({ code, label }) => (
          <button key={code} type="button" onClick={() => onStop(code)}>
            {label}
          </button>
        ))}
        <button type="button" onClick={onBack}>
          Back
        </button>
      </div>
      <Cautions at="broken" signals="hidden" />
    </section>
  );
}
