import type { Entry } from '../ledger/event';
import type { Prediction } from '../score/prediction';
import type { LifeGuess } from '../shop/noun';
import type { EndCause } from '../shop/vocabulary';
import { storedPredictions, type ToolLog } from './stored-predictions';

/** A split die opened or closed a touch. */
export interface CardAdjustment {
  readonly onDay: string;
  readonly direction: 'opened' | 'closed';
  readonly amount: string;
}

/** One edge of a tool over its life. */
export interface EdgeCard {
  readonly edgeNo: number;
  /** Moments of its first and last row of the cut log; null where it has cut nothing. */
  readonly firstCutAtMs: number | null;
  readonly lastCutAtMs: number | null;
  readonly rows: number;
  readonly ends: number;
  readonly goodEnds: number;
  /** Millionths of a turn (die) or of a mm³ (blade). */
  readonly exposureMicro: number;
  readonly jobLineIds: readonly string[];
  readonly timesIssued: number;
  readonly readings: number;
  readonly adjustments: readonly CardAdjustment[];
  /** First-off checks: passed and failed, in order. */
  readonly firstOffs: readonly ('pass' | 'fail')[];
  readonly ended: { readonly cause: EndCause; readonly atMs: number } | null;
  /** What was said of it when it went out, and how that turned out. */
  readonly predictions: readonly Prediction[];
}

const NEW_EDGE: Omit<EdgeCard, 'edgeNo' | 'predictions'> = {
  ...{ firstCutAtMs: null, lastCutAtMs: null, rows: 0, ends: 0, goodEnds: 0, exposureMicro: 0 },
  ...{ jobLineIds: [], timesIssued: 0, readings: 0, adjustments: [], firstOffs: [], ended: null },
};

/**
 * A tool's history card: per edge what it cut, where it went, how it was read and adjusted, why it ended, and what was said
 * of it at each issue with how that turned out. A regrind sets the count of the edge back to zero; what the edges before it
 * cut is kept. Counts are those of the log: use before the tool was entered is not in them. For /tools/[id]/card.
 */
export function toolCard(log: ToolLog, guesses: readonly LifeGuess[]): EdgeCard[] {
  const edges: Omit<EdgeCard, 'predictions'>[] = [{ edgeNo: 1, ...NEW_EDGE }];
  for (const entry of log.entries) {
    const edge = edges[edges.length - 1];
    if (edge === undefined) continue;
    if (entry.kind === 'edge-renewed') edges.push({ edgeNo: edge.edgeNo + 1, ...NEW_EDGE });
    else edges[edges.length - 1] = { ...edge, ...changeBy(entry, edge) };
  }
  const said = storedPredictions([log], guesses);
  return edges.map((edge) => ({
    ...edge,
    predictions: said.filter(({ what }) => what.edgeNo === edge.edgeNo),
  }));
}

function changeBy(entry: Entry, edge: Omit<EdgeCard, 'predictions'>): Partial<EdgeCard> {
  switch (entry.kind) {
    case 'cut-logged': {
      const { ends, goodEnds, exposureMicro, cutAtMs, jobLineId } = entry.payload;
      const lines = jobLineId === null ? edge.jobLineIds : [...new Set([...edge.jobLineIds, jobLineId])];
      return {
        ...{ rows: edge.rows + 1, ends: edge.ends + ends, goodEnds: edge.goodEnds + goodEnds },
        exposureMicro: edge.exposureMicro + exposureMicro,
        firstCutAtMs: Math.min(edge.firstCutAtMs ?? cutAtMs, cutAtMs),
        lastCutAtMs: Math.max(edge.lastCutAtMs ?? cutAtMs, cutAtMs),
        jobLineIds: lines,
      };
    }
    case 'tool-issued':
      return { timesIssued: edge.timesIssued + 1 };
    case 'edge-read':
      return { readings: edge.readings + 1 };
    case 'die-adjusted':
      return { adjustments: [...edge.adjustments, entry.payload] };
    case 'first-off-checked':
      return entry.payload.result === 'not-gauged'
        ? {}
        : { firstOffs: [...edge.firstOffs, entry.payload.result] };
    case 'edge-ended':
      return { ended: { cause: entry.payload.cause, atMs: entry.serverAtMs } };
    default:
      return {};
  }
}
