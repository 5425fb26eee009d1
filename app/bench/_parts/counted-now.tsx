import type { BenchTally } from '@/lib/bench/bench-tally';
import type { CutOperation } from '@/lib/shop/vocabulary';
import styles from './bench.module.css';

interface CountedNowProps {
  readonly operation: CutOperation;
  readonly tally: BenchTally | undefined;
}

/** What one edge has done in the work in hand, not yet handed over. */
export function CountedNow({ operation, tally }: CountedNowProps) {
  const good = tally?.goodEnds ?? 0;
  const bad = (tally?.ends ?? 0) - good;
  return (
    <p className={styles.count} role="status">
      <b className="num">{good}</b> {operation}
      {good === 1 ? '' : 's'} now
      {bad === 0 ? '' : `, ${bad} rejected`}
    </p>
  );
}
