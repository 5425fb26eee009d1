import type { Entry } from '../ledger/event';
import type { ReadingSettings } from '../reading/reading-settings';
import type { LogEvent } from '../score/log-event';
import { evidenceOfCause } from '../shop/end-evidence';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import type { CutOperation } from '../shop/vocabulary';
import { fromMicro } from '../units/micro';
import { isEdgeKind, partSizes } from './edge-histories';
import type { ToolLog } from './stored-predictions';
import { wornShare } from './worn-readings';

/**
 * A shop's log as the backtest replays it: edges coming into use, rows, readings, ends, in the order in which they were entered. An
 * edge whose earlier use was counted begins with that use as an opening row.
 */
export function logEvents(
  logs: readonly ToolLog[],
  tables: {
    readonly parts: readonly Part[];
    readonly connections: readonly Connection[];
    /** Ends of every job line, closed jobs too: what was asked of an edge is what its line still lacked. */
    readonly lineEnds?: ReadonlyMap<string, number>;
    readonly readingSettings?: ReadingSettings | undefined;
  },
): LogEvent[] {
  const sizes = partSizes(tables);
  const placed = logs.flatMap(({ toolId, partId, entries }) => {
    const odIn = sizes.get(partId);
    return odIn === undefined
      ? []
      : toolEvents({ toolId, partId, odIn, entries, readingSettings: tables.readingSettings });
  });
  placed.sort((a, b) => a.seq - b.seq);
  return withAskedEnds(placed, tables.lineEnds ?? new Map());
}

/** Tells each row what its job line still lacked when the row began, over all the tools that worked on the line. */
function withAskedEnds(placed: readonly Placed[], lineEnds: ReadonlyMap<string, number>): LogEvent[] {
  const good = new Map<string, number>();
  return placed.map(({ event, line }) => {
    const ends = line === undefined ? undefined : lineEnds.get(line.lineId);
    if (event.type !== 'cut' || line === undefined || ends === undefined) return event;
    const key = `${line.operation} ${line.lineId}`;
    const before = good.get(key) ?? 0;
    good.set(key, before + event.goodEnds);
    return { ...event, askedEnds: Math.max(event.ends, ends - before) };
  });
}

interface Placed {
  readonly seq: number;
  readonly event: LogEvent;
  /** The job line and the work of a row. */
  readonly line?: { readonly lineId: string; readonly operation: CutOperation } | undefined;
}

function toolEvents(tool: {
  toolId: string;
  partId: string;
  odIn: number;
  entries: readonly Entry[];
  readingSettings: ReadingSettings | undefined;
}): Placed[] {
  const { toolId } = tool;
  let edgeNo = 0;
  return tool.entries.flatMap((entry): Placed[] => {
    const place = (...events: LogEvent[]) => events.map((event) => ({ seq: entry.seq, event }));
    switch (entry.kind) {
      case 'tool-received':
      case 'edge-renewed':
        edgeNo += 1;
        return place(...beginnings(tool, edgeNo, entry));
      case 'cut-logged': {
        const { connectionId, materialId, dry, rework, ends, goodEnds, exposureMicro, cutAtMs } =
          entry.payload;
        const what = { connectionId, materialId, dry, rework, ends, goodEnds };
        const exposurePerEnd = fromMicro(exposureMicro) / ends;
        const event: LogEvent = { type: 'cut', toolId, edgeNo, atMs: cutAtMs, ...what, exposurePerEnd };
        const { jobLineId: lineId, operation } = entry.payload;
        return [{ seq: entry.seq, event, line: lineId === null ? undefined : { lineId, operation } }];
      }
      case 'edge-read': {
        const share = wornShare(entry.payload.finding, tool.readingSettings);
        return share === undefined ? [] : place({ type: 'read', toolId, edgeNo, ...share });
      }
      case 'edge-ended':
        return place({
          type: 'ended',
          toolId,
          edgeNo,
          atMs: entry.serverAtMs,
          how: evidenceOfCause(entry.payload.cause),
        });
      case 'tool-moved':
        return entry.payload.to === 'lost'
          ? place({ type: 'ended', toolId, edgeNo, atMs: entry.serverAtMs, how: 'lost' })
          : [];
      default:
        return [];
    }
  });
}

function beginnings(
  { toolId, partId, odIn }: { toolId: string; partId: string; odIn: number },
  edgeNo: number,
  entry: Entry,
): LogEvent[] {
  if (entry.kind !== 'tool-received') {
    return [
      { type: 'began', toolId, edgeNo, kind: 'blade', partId, odIn, regrinds: edgeNo - 1, startKnown: true },
    ];
  }
  const { role, opening } = entry.payload;
  if (!isEdgeKind(role)) return [];
  const began: LogEvent = {
    ...{ type: 'began', toolId, edgeNo, kind: role, partId, odIn, regrinds: 0 },
    startKnown: opening.known !== 'unknown',
  };
  if (opening.known !== 'counted') return [began];
  const { connectionId, materialId, ends, exposureMicro } = opening;
  const counted = { connectionId, materialId, dry: false, rework: false, ends, goodEnds: ends };
  const atMs = entry.serverAtMs;
  return [
    began,
    {
      type: 'cut',
      toolId,
      edgeNo,
      atMs,
      ...counted,
      exposurePerEnd: fromMicro(exposureMicro) / ends,
      opening: true,
    },
  ];
}
