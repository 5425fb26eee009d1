import { decideFirstOff, type FirstOffResult } from '../../../lib/acceptance/first-off';
import { ok, type Refusal, type Result } from '../../../lib/result';
import type { Env, Ledger } from '../../ledger/ledger';
import type { Db } from '../../open';
import { gaugeFacts } from '../accept/gauge-facts';
import { findToolId, unknownTool } from '../tool-entry';

/** The gauges as they are marked; refuses one that nobody knows. */
export function markedGauges(db: Db, typed: readonly string[]): Result<string[], Refusal> {
  const marked: string[] = [];
  for (const one of typed) {
    const id = findToolId(db, one);
    if (id === undefined) return unknownTool(one, 'gaugeIds');
    marked.push(id);
  }
  return ok([...new Set(marked)]);
}

/** Whether a first-off of a tool may be written down with these gauges, as the record has them in this transaction. */
export function checkFirstOffGauges(
  db: Db,
  ledger: Ledger,
  toolId: string,
  said: { readonly result: FirstOffResult; readonly onDay: string; readonly gaugeIds: readonly string[] },
  { nowMs: atMs }: Env,
): Result<null, Refusal> {
  const tool = ledger.find('tool', toolId);
  // A tool that nobody knows is refused by its own history.
  if (tool === undefined) return ok(null);
  const fits = ledger.find('part', tool.partId)?.fitsConnectionIds ?? [];
  const connections = fits.flatMap((id) => ledger.find('connection', id) ?? []);
  const gauges = said.gaugeIds.map((id) => ({ toolId: id, facts: gaugeFacts(db, ledger, id) }));
  return decideFirstOff({ role: tool.role, connections }, { ...said, atMs, gauges });
}
