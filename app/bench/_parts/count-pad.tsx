'use client';

import type { BenchEdge } from '@/lib/bench/bench-snapshot';
import type { BenchPress } from '@/lib/bench/bench-tally';
import styles from './bench.module.css';

interface CountPadProps {
  readonly edge: BenchEdge;
  readonly onPress: (press: BenchPress) => void;
  readonly onSheet: (sheet: 'reject' | 'stop' | 'turns') => void;
}

/** +1, +5, reject, stop: targets for gloves, gaps between them. */
export function CountPad({ edge, onPress, onSheet }: CountPadProps) {
  const { toolId, operation } = edge;
  const add = (ends: number) => onPress({ kind: 'ends', toolId, operation, ends });
  return (
    <div className={styles.pad}>
      <button type="button" className={styles.big} onClick={() => add(1)}>
        +1
      </button>
      <button type="button" className={styles.big} onClick={() => add(5)}>
        +5
      </button>
      <button type="button" onClick={() => onSheet('reject')}>
        Reject an end
      </button>
      <button type="button" onClick={() => onSheet('stop')}>
        Stop
      </button>
      {operation === 'thread' ? (
        <button type="button" className={styles.wide} onClick={() => onSheet('turns')}>
          Count the turns
        </button>
      ) : null}
    </div>
  );
}
