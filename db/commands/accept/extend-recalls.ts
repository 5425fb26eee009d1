import { isInWindow } from '../../../lib/recall/recall-window';
import { ok, type Refusal, type Result } from '../../../lib/result';
import type { Acceptance } from '../../../lib/shop/acceptance';
import { derivedId } from '../../ledger/derived-id';
import type { Ledger } from '../../ledger/ledger';
import type { Db } from '../../open';
import { listRecallsOf } from '../../queries/recalls';

interface LateLook {
  readonly id: string;
  readonly deviceAtMs: number;
  readonly payload: Acceptance;
}

/** Ends that came in late join every recall of their gauges whose window they fall in; a closed one opens again. */
export function extendRecalls(db: Db, ledger: Ledger, look: LateLook): Result<null, Refusal> {
  const { gauges, gaugedAtMs: atMs, gaugedOnDay: onDay, decision, endCount } = look.payload;
  for (const gaugeId of new Set(gauges.map(({ toolId }) => toolId))) {
    const said = gauges.filter(({ toolId }) => toolId === gaugeId).map(({ verdict }) => verdict);
    const accepted = decision === 'accepted' && said.includes('pass');
    const refused = decision === 'refused' && said.includes('fail');
    if (!accepted && !refused) continue;
    for (const recall of listRecallsOf(db, gaugeId)) {
      if (!isInWindow({ atMs, onDay }, recall)) continue;
      const added = ledger.record({
        id: derivedId(look.id, recall.id),
        deviceAtMs: look.deviceAtMs,
        reason: 'These ends were gauged in its window and came in late.',
        subjectId: recall.id,
        kind: 'recall-extended',
        payload: {
          suspects: accepted ? [{ acceptanceId: look.id, endCount }] : [],
          refusedIds: refused ? [look.id] : [],
        },
      });
      if (!added.ok) return added;
    }
  }
  return ok(null);
}
