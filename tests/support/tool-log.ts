import type { Entry, EntryKind, PayloadOf } from '@/lib/ledger/event';
import type { ToolLog } from '@/lib/outlook/stored-predictions';
import type { Role } from '@/lib/shop/vocabulary';
import { entry, receipt, cut as rowOf } from './entry';
import { setParts } from './shop-record';

/** A thread of 3/8 medium pressure: 10.5 turns an end. */
export const DIE_ROW = { connectionId: '3-8-medium', materialId: '316-cw', jobLineId: null };

/** Logs of tools, their entries numbered in the order in which they are made here; a minute passes with each. */
export function logBook() {
  let seq = 0;
  const logs = new Map<string, { toolId: string; partId: string; entries: Entry[] }>();
  const add = <K extends EntryKind>(kind: K, toolId: string, payload: PayloadOf<K>): Entry => {
    seq += 1;
    const made = entry(kind, toolId, payload, { id: `entry-${seq}`, seq, serverAtMs: seq * 60_000 });
    logs.get(toolId)?.entries.push(made);
    return made;
  };
  return {
    add,
    receive: (toolId: string, role: Role, over: Partial<PayloadOf<'tool-received'>> = {}) => {
      const partId = setParts().find((part) => part.role === role)?.id ?? '';
      logs.set(toolId, { toolId, partId, entries: [] });
      return add('tool-received', toolId, receipt(role, { partId, ...over }));
    },
    cut: (toolId: string, ends: number, over: Partial<PayloadOf<'cut-logged'>> = {}) =>
      add(
        'cut-logged',
        toolId,
        rowOf({
          ...{ ...DIE_ROW, ends, goodEnds: ends, exposureMicro: ends * 10_500_000 },
          ...{ cutAtMs: (seq + 1) * 60_000, ...over },
        }),
      ),
    issue: (toolId: string, shown?: PayloadOf<'tool-issued'>['shown'], jobLineId: string | null = 'J-1.1') =>
      add('tool-issued', toolId, { toPersonId: 'ash', jobLineId, bench: '', ...(shown && { shown }) }),
    end: (toolId: string, cause: PayloadOf<'edge-ended'>['cause']) =>
      add('edge-ended', toolId, { cause, to: 'scrapped' }),
    logs: (): ToolLog[] => [...logs.values()],
  };
}
