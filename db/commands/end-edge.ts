import type { Permit } from '../../lib/access/permit';
import { currentEdge } from '../../lib/ledger/tool-record';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type { EndEdge, RenewEdge } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { checkFirstOffGauges, markedGauges } from './gauge/check-first-off-gauges';
import { recordToolEntry } from './tool-entry';

/** Takes an edge out of service, with its cause: worn is evidence of wear, an incident is not, good is censored. */
export function endEdge(
  db: Db,
  permit: Permit<'end-edge'>,
  input: EndEdge,
  env: Env,
): Result<Recorded, Refusal> {
  const { cause, to, pieces } = input;
  const payload = pieces === undefined ? { cause, to } : { cause, to, pieces };
  return recordToolEntry(db, permit, input, env, { kind: 'edge-ended', payload });
}

/** A blade back from regrind: a new edge from zero, its earlier edges kept. Its first-off is owed, or passed with its gauges. */
export function renewEdge(
  db: Db,
  permit: Permit<'renew-edge'>,
  input: RenewEdge,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay, firstOff } = input;
  const gauges = markedGauges(db, firstOff === 'passed' ? input.gaugeIds : []);
  if (!gauges.ok) return gauges;
  const gaugeIds = gauges.value;
  const payload = { onDay, firstOff, ...(gaugeIds.length === 0 ? {} : { gaugeIds }) };
  const content = { kind: 'edge-renewed', payload } as const;
  return recordToolEntry(db, permit, input, env, content, (ledger, toolId) => {
    const tool = ledger.find('tool', toolId);
    const part = tool?.role === 'blade' ? ledger.find('part', tool.partId) : undefined;
    const regrinds = (tool && currentEdge(tool)?.edgeNo) ?? 0;
    if (part !== undefined && regrinds > part.regrindLimit) {
      return refuse('limit', `${toolId} has reached its limit of ${part.regrindLimit} regrinds; scrap it.`);
    }
    return firstOff === 'passed'
      ? checkFirstOffGauges(db, ledger, toolId, { result: 'pass', onDay, gaugeIds }, env)
      : ok(null);
  });
}
