import type { Master } from '../../../lib/gauge/decide-check';
import type { Ledger } from '../../ledger/ledger';

/** A gauge, or the master of its check, as the record has it at this moment of the transaction. */
export function masterFacts(ledger: Ledger, toolId: string): Master | undefined {
  const tool = ledger.find('tool', toolId);
  if (tool === undefined) return undefined;
  const fitsConnectionIds = ledger.find('part', tool.partId)?.fitsConnectionIds ?? [];
  const { id, role, state, dueOnDay } = tool;
  return { id, role, state, dueOnDay, fitsConnectionIds };
}
