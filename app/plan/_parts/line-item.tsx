import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { VerdictMark } from '@/app/_shared/ui';
import { blockerSentences } from './blocker-sentences';
import { chanceSentence, endsUnlessShort } from './life-words';
import styles from './plan.module.css';
import type { PlanRow } from './plan-rows';
import { SizeDrawing, SizeWords } from './size-drawing';

interface LineItemProps {
  readonly row: PlanRow;
  readonly today: string;
  readonly lineLabel: (lineId: string) => string;
  /** What it rests on that is not here today, as sentences. */
  readonly restsOn?: (row: PlanRow) => readonly string[];
  /** The one red thing of the page. */
  readonly alarm: boolean;
}

/** One line of the plan: what, how many, when, whether, and everything that is in the way, most limiting first. */
export function LineItem({ row, today, lineLabel, restsOn, alarm }: LineItemProps) {
  const { line, verdict, connection } = row;
  const chance = chanceSentence(verdict);
  const ends = endsUnlessShort(verdict);
  const sentences = blockerSentences(verdict.blockers, lineLabel);
  const rests = restsOn?.(row) ?? [];
  return (
    <li className={styles.line} id={line.id}>
      <div className={styles.drawing}>
        <SizeDrawing connection={connection} />
      </div>
      <div className={styles.what}>
        <h3>
          <Link href={`/plan/lines/${encodeURIComponent(line.id)}`} prefetch={false}>
            <SizeWords connection={connection} connectionId={line.connectionId} />
            <span className="vh">, line {line.id}</span>
          </Link>
        </h3>
        <p className={styles.sub}>
          {row.materialText}
          {line.heat === '' ? null : <span className="quiet">, heat {line.heat}</span>}
        </p>
        <p className="fine">
          <Link href={`/plan/jobs/${encodeURIComponent(line.jobId)}`} prefetch={false}>
            Job {line.jobId}
          </Link>
          {line.jobTitle === '' ? null : `: ${line.jobTitle}`}
        </p>
      </div>
      <div className={styles.when}>
        <p>
          <b className="num">{endsWords(row)}</b>
        </p>
        <p className="quiet">
          {dayText(line.startOnDay, today)} to {dayText(line.dueOnDay, today)}
        </p>
        {line.value === 'precious' ? <p className="quiet">cannot be remade</p> : null}
      </div>
      <div className={styles.whether}>
        <VerdictMark verdict={verdict.verdict} alarm={alarm} />
        {chance === '' ? null : <p className="quiet">{chance}</p>}
        {ends === '' ? null : <p className="quiet">{ends}</p>}
      </div>
      {sentences.length > 0 ? (
        <ol className={styles.blockers}>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ol>
      ) : null}
      {rests.length > 0 ? (
        <ul className={styles.blockers} aria-label="Rests on what is not here today">
          {rests.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
    </li>
  );
}

/** "24 ends", or "12 of 24 ends to make" once some are made. */
export function endsWords({ endsToMake, line }: Pick<PlanRow, 'endsToMake' | 'line'>): string {
  if (endsToMake === 0) return `all ${count(line.ends, 'end')} made`;
  return endsToMake === line.ends
    ? count(line.ends, 'end')
    : `${endsToMake} of ${count(line.ends, 'end')} to make`;
}
