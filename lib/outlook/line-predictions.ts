import type { Entry } from '../ledger/event';
import type { Prediction } from '../score/prediction';
import { type LineRowCut, type LineSince, settleLineEdges } from '../score/settle-line';
import { settled } from '../score/settle-prediction';
import { evidenceOfCause } from '../shop/end-evidence';
import type { Job, JobLine } from '../shop/job';
import { jobLineId } from '../shop/job-line-id';
import type { CutOperation } from '../shop/vocabulary';
import type { ToolLog } from './stored-predictions';

/** A job's standing entries in order. */
export interface JobLog {
  readonly jobId: string;
  readonly entries: readonly Entry[];
}

/** When each order was placed, epoch ms: what was on order when something was said was counted on. */
export type OrdersPlaced = ReadonlyMap<string, number>;

/** A row of the cut log for a line, with when its edge came into the shop. */
interface LineCut extends Omit<LineRowCut, 'furtherEdge'> {
  readonly seq: number;
  /** When the shop could first count on the edge: received, or on order. */
  readonly countedOnSinceMs: number;
}

/**
 * What the plan said of lines when their jobs were planned or changed, each judged by what the log says of the line since:
 * made with the edges that were there or on order, or only with a further one.
 */
export function linePredictions(
  jobs: readonly JobLog[],
  tools: readonly ToolLog[],
  ordersPlaced: OrdersPlaced,
): Prediction[] {
  const cuts = cutsByLine(tools, ordersPlaced);
  return jobs.flatMap(({ jobId, entries }) =>
    entries.flatMap((entry, at) => {
      if (entry.kind !== 'job-set') return [];
      const after = entries.slice(at + 1);
      return (entry.payload.shown ?? []).flatMap((shown): Prediction[] => {
        const line = entry.payload.lines.find(({ lineNo }) => lineNo === shown.lineNo);
        if (line === undefined) return [];
        const lineId = jobLineId(jobId, shown.lineNo);
        const prediction: Prediction = {
          id: `${entry.id}:${shown.lineNo}`,
          madeAtMs: entry.serverAtMs,
          kind: 'line-made',
          probability: shown.pMade,
          what: {
            lineId,
            ends: shown.ends,
            connectionId: line.connectionId,
            materialId: line.materialId,
            byDay: line.dueOnDay,
          },
          settled: null,
        };
        return [settled(prediction, settleLineEdges(sinceSaid(entry, line, after, cuts.get(lineId) ?? [])))];
      });
    }),
  );
}

function sinceSaid(said: Entry, line: JobLine, after: readonly Entry[], cuts: readonly LineCut[]): LineSince {
  const done = (operation: CutOperation): number =>
    cuts
      .filter((row) => row.seq < said.seq && row.operation === operation)
      .reduce((sum, { goodEnds }) => sum + goodEnds, 0);
  const lacking = Object.fromEntries(
    (['cone', 'thread'] as const)
      .filter((operation) => line.operations.includes(operation))
      .map((operation) => [operation, Math.max(0, line.ends - done(operation))]),
  );
  const rows = cuts
    .filter(({ seq }) => seq > said.seq)
    .map((row) => ({ ...row, furtherEdge: row.countedOnSinceMs > said.serverAtMs }));
  return { rows, lacking, ended: endOf(line, after) };
}

/** What put an end to the line as it was when it was spoken of. */
function endOf(line: JobLine, after: readonly Entry[]): LineSince['ended'] {
  for (const entry of after) {
    const atMs = entry.serverAtMs;
    if (entry.kind === 'job-set' && !isSameWork(line, entry.payload)) return { how: 'changed', atMs };
    if (entry.kind === 'job-closed')
      return { how: entry.payload.how === 'cancelled' ? 'cancelled' : 'closed-short', atMs };
  }
  return null;
}

function isSameWork(line: JobLine, { lines }: Job): boolean {
  const now = lines.find(({ lineNo }) => lineNo === line.lineNo);
  return (
    now !== undefined &&
    now.ends === line.ends &&
    now.connectionId === line.connectionId &&
    now.materialId === line.materialId &&
    now.operations.join() === line.operations.join()
  );
}

function cutsByLine(tools: readonly ToolLog[], ordersPlaced: OrdersPlaced): Map<string, LineCut[]> {
  const byLine = new Map<string, LineCut[]>();
  for (const { entries } of tools) {
    let countedOnSinceMs = 0;
    entries.forEach((entry, at) => {
      if (entry.kind === 'tool-received') {
        const placedAtMs = ordersPlaced.get(entry.payload.orderId ?? '') ?? entry.serverAtMs;
        countedOnSinceMs = Math.min(placedAtMs, entry.serverAtMs);
      }
      if (entry.kind !== 'cut-logged' || entry.payload.jobLineId === null) return;
      const { jobLineId: lineId, operation, goodEnds, cutAtMs: atMs } = entry.payload;
      const row = {
        seq: entry.seq,
        atMs,
        operation,
        goodEnds,
        woreOut: woreOutNext(entries, at),
        countedOnSinceMs,
      };
      byLine.set(lineId, [...(byLine.get(lineId) ?? []), row]);
    });
  }
  for (const rows of byLine.values()) rows.sort((a, b) => a.seq - b.seq);
  return byLine;
}

/** Whether the edge was found worn out after this row and before another. */
function woreOutNext(entries: readonly Entry[], at: number): boolean {
  const next = entries.slice(at + 1).find(({ kind }) => kind === 'cut-logged' || kind === 'edge-ended');
  return next?.kind === 'edge-ended' && evidenceOfCause(next.payload.cause) === 'worn';
}
