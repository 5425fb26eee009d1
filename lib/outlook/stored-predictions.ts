import type { Entry } from '../ledger/event';
import { fixedCountSays } from '../score/fixed-count';
import type { Prediction } from '../score/prediction';
import { type EdgeSince, type RowSince, settled, settleToolFinishes } from '../score/settle-prediction';
import type { Cut } from '../shop/cut';
import { evidenceOfCause } from '../shop/end-evidence';
import type { LifeGuess } from '../shop/noun';

/** A tool's standing entries in order, with the part it is. */
export interface ToolLog {
  readonly toolId: string;
  readonly partId: string;
  readonly entries: readonly Entry[];
}

/**
 * The predictions that were shown when tools were issued, each judged by what followed until the tool was next issued: it
 * cut so many ends, wore out before, or came back good with fewer cut (void). Beside each what a fixed count would have
 * said: the first guess of the part, taken as "change it after so many ends".
 */
export function storedPredictions(logs: readonly ToolLog[], guesses: readonly LifeGuess[]): Prediction[] {
  const changeAt = new Map(guesses.map(({ partId, ends }) => [partId, ends]));
  return logs.flatMap((log) => predictionsOf(log, changeAt.get(log.partId)));
}

function predictionsOf({ toolId, entries }: ToolLog, changeAtEnds: number | undefined): Prediction[] {
  let usedEnds = 0;
  let edgeNo = 1;
  return entries.flatMap((entry, at): Prediction[] => {
    if (entry.kind === 'cut-logged') usedEnds += entry.payload.ends;
    if (entry.kind === 'edge-renewed') [usedEnds, edgeNo] = [0, edgeNo + 1];
    if (entry.kind === 'tool-received' && entry.payload.opening.known === 'counted') {
      usedEnds += entry.payload.opening.ends;
    }
    if (entry.kind !== 'tool-issued' || entry.payload.shown === undefined) return [];
    const { connectionId, materialId, ends, probability, lowEnds, highEnds } = entry.payload.shown;
    const prediction: Prediction = {
      id: entry.id,
      madeAtMs: entry.serverAtMs,
      kind: 'tool-finishes',
      probability,
      what: { toolId, edgeNo, ends, connectionId, materialId, ...lineOf(entry.payload.jobLineId) },
      band: { low: lowEnds, high: highEnds },
      ...(changeAtEnds === undefined
        ? {}
        : { fixedCount: fixedCountSays({ usedEnds, jobEnds: ends, changeAtEnds }) }),
      settled: null,
    };
    const work = { connectionId, materialId };
    return [settled(prediction, settleToolFinishes(ends, sinceIssue(entries.slice(at + 1), work)))];
  });
}

function lineOf(lineId: string | null): { lineId?: string } {
  return lineId === null ? {} : { lineId };
}

/** What followed an issue, up to the next one, told apart by work. Coming back with the edge still good ends it too. */
function sinceIssue(after: readonly Entry[], work: Work): EdgeSince {
  const nextIssue = after.findIndex((entry) => entry.kind === 'tool-issued' || entry.kind === 'edge-renewed');
  const within = nextIssue < 0 ? after : after.slice(0, nextIssue);
  const rows = within.flatMap((entry) =>
    entry.kind === 'cut-logged' ? [{ ...rowOf(entry.payload), otherWork: isOther(work, entry.payload) }] : [],
  );
  return { rows, ended: endOf(within) ?? (nextIssue < 0 ? null : broughtBack(after[nextIssue])) };
}

function rowOf({ cutAtMs, ends, goodEnds }: Cut): Pick<RowSince, 'atMs' | 'ends' | 'goodEnds'> {
  return { atMs: cutAtMs, ends, goodEnds };
}

type Work = Pick<Cut, 'connectionId' | 'materialId'>;

function isOther(a: Work, b: Work): boolean {
  return a.connectionId !== b.connectionId || a.materialId !== b.materialId;
}

function endOf(entries: readonly Entry[]): EdgeSince['ended'] {
  for (const entry of entries) {
    const atMs = entry.serverAtMs;
    if (entry.kind === 'edge-ended') return { how: evidenceOfCause(entry.payload.cause), atMs };
    if (entry.kind === 'tool-moved' && entry.payload.to === 'lost') return { how: 'lost', atMs };
  }
  return null;
}

function broughtBack(next: Entry | undefined): EdgeSince['ended'] {
  return next === undefined ? null : { how: 'removed-working', atMs: next.serverAtMs };
}
