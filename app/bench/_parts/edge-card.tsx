import { chanceWords, count, ends } from '@/app/_shared/format';
import { DieMark, ToolId } from '@/app/_shared/ui';
import type { BenchEdge, BenchLine } from '@/lib/bench/bench-snapshot';
import type { EdgeAnswer } from '@/lib/bench/edge-answer';
import { isBetterRetired } from '@/lib/kit/better-retired';
import { capital } from '@/lib/text/capital';
import styles from './bench.module.css';

interface EdgeCardProps {
  readonly line: BenchLine;
  readonly edge: BenchEdge;
  readonly answer: EdgeAnswer;
  readonly others: readonly BenchEdge[];
  readonly onChoose: (toolId: string) => void;
}

/** The answer, readable at arm's length: will it finish this work, why, and is everything else in order. */
export function EdgeCard({ line, edge, answer, others, onChoose }: EdgeCardProps) {
  const stops = [edge, ...line.gauges, ...line.fluids].flatMap(({ stop }) => stop ?? []);
  const minds = [...line.gauges, ...line.fluids].flatMap(({ mind }) => mind ?? []);
  const isThread = edge.operation === 'thread';
  const noGauge = isThread && !line.gauges.some(({ role }) => role === 'go-ring');
  return (
    <section className={styles.card} aria-label={`${edge.toolId} for this work`}>
      <div className={styles.verdict}>
        <p className={styles.tool}>
          <ToolId id={edge.toolId} />
        </p>
        {answer.verdict === null ? null : (
          <DieMark verdict={answer.verdict} size="l" alarm={answer.verdict === 'swap'} />
        )}
      </div>
      <p className={styles.figures}>{figures(answer)}</p>
      {answer.chance === null ? null : (
        <p className="quiet">
          {capital(chanceWords(answer.chance))} that it lasts. An estimate from counts: look at the edge, too.
        </p>
      )}
      {isBetterRetired(edge.adjustments) ? (
        <p className="quiet">Adjusted {count(edge.adjustments, 'time')}: better retired.</p>
      ) : null}
      {stops.length === 0 && minds.length === 0 ? (
        <AidLine noGauge={noGauge} hasFluid={line.fluids.length > 0} />
      ) : null}
      {stops.map((sentence) => (
        <p key={sentence} className={styles.stopLine}>
          <b>Stop.</b> {sentence}
        </p>
      ))}
      {minds.map((sentence) => (
        <p key={sentence} className="quiet">
          {sentence}
        </p>
      ))}
      {answer.verdict === 'swap' && others.length === 0 ? (
        <a className={styles.link} href={`/plan/lines/${encodeURIComponent(line.id)}#tools`}>
          What to take instead
        </a>
      ) : null}
      {others.map(({ toolId }) => (
        <button key={toolId} type="button" className={styles.other} onClick={() => onChoose(toolId)}>
          Cut with {toolId}
        </button>
      ))}
    </section>
  );
}

/** Only what is all there looks so: a gauge or a bottle that is not out with the line is no green line. */
function AidLine({ noGauge, hasFluid }: { readonly noGauge: boolean; readonly hasFluid: boolean }) {
  if (noGauge) return <p className={styles.stopLine}>No GO ring is out for this line.</p>;
  if (hasFluid) return <p className={styles.fine}>Gauges and fluid in order.</p>;
  return <p>Gauges in order. No fluid is out with this line.</p>;
}

function figures({ safeEnds, likelyEnds, endsToCut }: EdgeAnswer): string {
  const asked = endsToCut === 0 ? 'all of this line is cut' : `this work needs ${endsToCut} more`;
  if (safeEnds === null || likelyEnds === null) return `No figure for it; ${asked}.`;
  return `${ends(safeEnds)} safe, ${ends(likelyEnds)} likely; ${asked}.`;
}
