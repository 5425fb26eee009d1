import type { BenchLine } from '@/lib/bench/bench-snapshot';
import type { CutOperation } from '@/lib/shop/vocabulary';
import styles from './bench.module.css';

/** Nothing is out to cut with: what was taken here and not sent yet, or the way to a kit. */
export function NoEdge({
  line,
  operation,
  taken,
}: {
  readonly line: BenchLine;
  readonly operation: CutOperation;
  /** Taken here and not sent yet: its figures come with the network. */
  readonly taken: readonly string[];
}) {
  if (taken.length > 0)
    return (
      <p role="status" className={styles.none}>
        {taken.join(', ')} taken for this work. What it has left shows here as soon as there is network; look
        at the edge and go by the gauges until then.
      </p>
    );
  return (
    <div role="alert" className={styles.none}>
      <p>No {operation === 'cone' ? 'blade' : 'die'} is out for this line.</p>
      <a className={styles.link} href={`/crib/issue/${encodeURIComponent(line.id)}`}>
        Make the kit
      </a>
    </div>
  );
}
