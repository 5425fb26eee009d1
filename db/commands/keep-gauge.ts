import type { Permit } from '../../lib/access/permit';
import { decideCheck, hasDayCome } from '../../lib/gauge/decide-check';
import type { Refusal, Result } from '../../lib/result';
import { refuse } from '../../lib/result';
import type { CheckGauge, DropGauge, SetGaugeInterval } from '../../lib/shop/gauge-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { masterFacts } from './gauge/master-facts';
import { findToolId, recordToolEntry } from './tool-entry';

/** Writes down a check of a gauge in the shop. Passed and documented it is evidence; failed it sets the gauge aside. */
export function checkGauge(
  db: Db,
  permit: Permit<'check-gauge'>,
  input: CheckGauge,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay, result, qualifies } = input;
  const againstToolId =
    input.againstToolId === null ? null : (findToolId(db, input.againstToolId) ?? input.againstToolId);
  const payload = { onDay, result, qualifies, againstToolId };
  return recordToolEntry(db, permit, input, env, { kind: 'gauge-checked', payload }, (ledger, toolId) => {
    if (!hasDayCome(onDay, env.nowMs)) return refuse('day', 'That day has not come yet.', 'onDay');
    const gauge = masterFacts(ledger, toolId);
    if (gauge === undefined) return refuse('unknown-tool', `No tool ${toolId} is in the record.`, 'toolId');
    const dropped = ledger.find('tool', toolId)?.dropped ?? null;
    if (result === 'pass' && dropped !== null && onDay < dropped.onDay)
      return refuse('knock', 'A check from before the knock cannot clear it. Check it now.', 'onDay');
    const master = againstToolId === null ? undefined : masterFacts(ledger, againstToolId);
    return decideCheck(gauge, payload, master);
  });
}

/** Sets a gauge aside after a knock: one tap, nothing asked. */
export function dropGauge(
  db: Db,
  permit: Permit<'set-aside-gauge'>,
  input: DropGauge,
  env: Env,
): Result<Recorded, Refusal> {
  return recordToolEntry(db, permit, input, env, {
    kind: 'gauge-dropped',
    payload: { onDay: input.onDay },
  });
}

/** Sets how long a calibration of a gauge is good for: a person's decision, with their name and a reason. */
export function setGaugeInterval(
  db: Db,
  permit: Permit<'set-gauge-interval'>,
  input: SetGaugeInterval,
  env: Env,
): Result<Recorded, Refusal> {
  const { intervalDays, intervalEnds, method } = input;
  const payload = { intervalDays, intervalEnds, method };
  return recordToolEntry(db, permit, input, env, { kind: 'gauge-interval-set', payload });
}
