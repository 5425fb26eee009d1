/**
 * <LifeBand low={37} median={83} high={131} need={24} noun="end" max={200} />
 * What an edge has left, as a band: solid up to `low` (9 in 10 last longer), hatched up to `high` (1 in 10 lasts longer),
 * a stroke at the median; `need` draws the flag of the job in hand. Raw estimates go in; format.ts rounds them down.
 * Give all bands of one list the same `max`. The sentence below it says the same in words (`words="hidden"` in a table
 * cell keeps it for screen readers).
 */
import { count, floorEnds, whole } from '../format';
import styles from './life-band.module.css';

interface LifeBandProps {
  readonly low: number;
  readonly median: number;
  readonly high: number;
  readonly need?: number;
  readonly max?: number;
  readonly noun?: string;
  readonly words?: 'shown' | 'hidden';
}

export function LifeBand({ low, median, high, need, max, noun = 'end', words = 'shown' }: LifeBandProps) {
  const far = Number.isFinite(high) ? high : 2 * median;
  const top = Math.max(max ?? 0, need ?? 0, max ? 0 : far) || 1;
  const at = (x: number) => `${Math.min(100, Math.max(0, ((x || 0) / top) * 100))}%`;
  const beyond = far > top;
  return (
    <div className={styles.band}>
      <div className={styles.scale} aria-hidden="true" data-need={need === undefined ? undefined : ''}>
        <span className={styles.sure} style={{ insetInlineStart: 0, width: at(low) }} />
        <span
          className={styles.likely}
          style={{ insetInlineStart: at(low), width: `calc(${at(far)} - ${at(low)})` }}
          data-beyond={beyond ? '' : undefined}
        />
        <span className={styles.median} style={{ insetInlineStart: at(median) }} />
        {need === undefined ? null : <span className={styles.need} style={{ insetInlineStart: at(need) }} />}
      </div>
      <p className={words === 'hidden' ? 'vh' : styles.words}>
        {lifeSentence({ low, median, high, need, noun })}
      </p>
    </div>
  );
}

/** The band in words: "37 ends safe, 83 likely; about 1 in 10 goes past 130. This job needs 24." */
export function lifeSentence({
  low,
  median,
  high,
  need,
  noun = 'end',
}: Omit<LifeBandProps, 'max' | 'words'>): string {
  if (![low, median].every(Number.isFinite)) return 'What is left is not known yet.';
  const [safe, likely] = [floorEnds(low), floorEnds(median)];
  const first = safe === 0 ? `No ${noun}s are sure` : `${count(safe, noun)} safe`;
  const far = Number.isFinite(high) ? `; about 1 in 10 goes past ${whole(floorEnds(high))}` : '';
  const wanted = need === undefined ? '' : ` This job needs ${whole(need)}.`;
  return `${first}, ${likely === 0 ? 'none' : whole(likely)} likely${far}.${wanted}`;
}
