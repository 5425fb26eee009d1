import type { GaugeFacts } from '../../../lib/acceptance/gauge-fit';
import type { ToolRecord } from '../../../lib/ledger/tool-record';
import type { Ledger } from '../../ledger/ledger';
import type { Db } from '../../open';
import { endsByGauge } from '../../queries/gauge-use';

/** A gauge as the record has it at this moment of the transaction; undefined when no tool bears that ID. */
export function gaugeFacts(db: Db, ledger: Ledger, toolId: string): GaugeFacts | undefined {
  const tool = ledger.find('tool', toolId);
  if (tool === undefined) return undefined;
  const { id, role, hand, state, stateSinceMs, dueOnDay, partId } = tool;
  const fitsConnectionIds = ledger.find('part', partId)?.fitsConnectionIds ?? [];
  const usedUp = isUsedUp(db, tool);
  return { id, role, hand, state, stateSinceMs, dueOnDay, fitsConnectionIds, usedUp };
}

/** Whether the ends gauged since its calibration are as many as one is good for; never where ends are not counted. */
function isUsedUp(db: Db, { id, interval }: ToolRecord): boolean {
  const limit = interval?.intervalEnds ?? null;
  return limit !== null && (endsByGauge(db).get(id) ?? 0) >= limit;
}
