import type { Entry, EntryKind, PayloadOf } from '@/lib/ledger/event';
import { evolveTool } from '@/lib/ledger/tool-history';
import type { ToolRecord } from '@/lib/ledger/tool-record';
import type { Role } from '@/lib/shop/vocabulary';
import { must, NOW_MS } from './db';

/** An entry as the ledger would hold it, without a database. */
export function entry<K extends EntryKind>(
  kind: K,
  subjectId: string,
  payload: PayloadOf<K>,
  over = {},
): Entry {
  const envelope = { id: 'entry-under-test', subjectId, deviceAtMs: NOW_MS, reason: '' };
  return { ...envelope, kind, payload, seq: 1, actorId: 'robin', serverAtMs: NOW_MS, ...over } as Entry;
}

/** The content of a receipt, new and without dates unless said otherwise. */
export function receipt(
  role: Role,
  over: Partial<PayloadOf<'tool-received'>> = {},
): PayloadOf<'tool-received'> {
  return {
    ...{
      partId: `${role}-part`,
      role,
      hand: null,
      lot: '',
      receivedOnDay: '2026-03-02',
      opening: { known: 'new' },
    },
    ...{ dueOnDay: null, expiresOnDay: null, openedOnDay: null, levelMl: null, orderId: null },
    ...over,
  };
}

/** A tool as it stands after these entries, all of which must be allowed. */
export function toolAfter(role: Role, ...later: Entry[]): ToolRecord {
  const first = entry('tool-received', 'T-1', receipt(role));
  return later.reduce((tool, next) => must(evolveTool(tool, next)), must(evolveTool(undefined, first)));
}

/** A row of the cut log. */
export function cut(over: Partial<PayloadOf<'cut-logged'>> = {}): PayloadOf<'cut-logged'> {
  return {
    ...{ operation: 'thread', connectionId: '9-16-high', materialId: '316', heat: '', ends: 2, goodEnds: 2 },
    ...{
      threadLengthMm: null,
      threadLengthTyped: '',
      dry: false,
      rework: false,
      rejects: [],
      jobLineId: null,
    },
    ...{ cutAtMs: NOW_MS, exposureMicro: 21_000_000, correctsId: null },
    ...over,
  };
}

export const ISSUE = entry('tool-issued', 'T-1', { toPersonId: 'ash', jobLineId: null, bench: '4' });
export const move = (to: PayloadOf<'tool-moved'>['to'], backOnDay: string | null = null) =>
  entry('tool-moved', 'T-1', { to, backOnDay });
export const end = (cause: PayloadOf<'edge-ended'>['cause'], to: PayloadOf<'edge-ended'>['to']) =>
  entry('edge-ended', 'T-1', { cause, to });
