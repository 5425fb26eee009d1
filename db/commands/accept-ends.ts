import { appliedRule, exposedThreadsRule, type RulesWritten } from '../../lib/acceptance/applied-rule';
import { decideAcceptance } from '../../lib/acceptance/decide-acceptance';
import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Acceptance } from '../../lib/shop/acceptance';
import type { AcceptEnds } from '../../lib/shop/acceptance-input';
import type { Connection } from '../../lib/shop/noun';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { edgeThen } from './accept/edge-then';
import { extendRecalls } from './accept/extend-recalls';
import { gaugeFacts } from './accept/gauge-facts';
import { gaugedMoment } from './accept/gauged-moment';
import { checkLine } from './accept/line-of-ends';
import { isSameLook } from './accept/same-look';
import { findToolId } from './tool-entry';

/**
 * Records one look at one or more ends: accepted or refused, by the rule that is written down and the gauges of the shop.
 * Ends gauged late by a device that was cut off join the recalls whose window they fall in, in the same transaction.
 */
export function acceptEnds(
  db: Db,
  permit: Permit<'accept-ends'>,
  input: AcceptEnds,
  env: Env,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(input.entryId, input.reason, (entry) => isSameLook(entry, input));
    if (before !== undefined) return before;
    const named = withShopIds(db, input);
    const payload = decide(db, ledger, named, env);
    if (!payload.ok) return payload;
    const { entryId: id, deviceAtMs, reason } = input;
    const about = { id, deviceAtMs, reason, subjectId: id };
    const done = ledger.record({ ...about, kind: 'ends-accepted', payload: payload.value });
    if (!done.ok) return done;
    const extended = extendRecalls(db, ledger, { ...about, payload: payload.value });
    return extended.ok ? done : extended;
  });
}

/** The tools as they are marked, look-alike characters folded; what nobody knows stays as typed and is refused later. */
function withShopIds(db: Db, input: AcceptEnds): AcceptEnds {
  const marked = (typed: string) => findToolId(db, typed) ?? typed;
  const orNull = (typed: string | null) => (typed === null ? null : marked(typed));
  return {
    ...input,
    gauges: input.gauges.map((gauge) => ({ ...gauge, toolId: marked(gauge.toolId) })),
    dieId: orNull(input.dieId),
    bladeId: orNull(input.bladeId),
    fluidId: orNull(input.fluidId),
  };
}

function decide(db: Db, ledger: Ledger, input: AcceptEnds, env: Env): Result<Acceptance, Refusal> {
  const moment = gaugedMoment(input, env);
  if (!moment.ok) return moment;
  const connection = ledger.find('connection', input.connectionId);
  if (connection === undefined || ledger.find('material', input.materialId) === undefined)
    return refuse(
      'unknown-size',
      'The shop has no table row for this size or material. Add it from the fitting maker’s manual first.',
      'connectionId',
    );
  const line = checkLine(db, input);
  if (!line.ok) return line;
  const rules = rulesWritten(ledger, line.value.jobId, connection);
  const rule = input.operations.includes('thread') ? appliedRule(rules) : null;
  const gaugedAtMs = moment.value;
  const decision = decideAcceptance({
    seen: input,
    use: { connection, gaugedOnDay: input.gaugedOnDay, gaugedAtMs },
    gauge: (toolId) => gaugeFacts(db, ledger, toolId),
    rule,
    exposed: exposedThreadsRule(rules),
  });
  if (!decision.ok) return decision;
  const dieThen = edgeThen(ledger, { toolId: input.dieId, role: 'die', connection });
  if (!dieThen.ok) return dieThen;
  const bladeThen = edgeThen(ledger, { toolId: input.bladeId, role: 'blade', connection });
  if (!bladeThen.ok) return bladeThen;
  const fluid = checkFluid(ledger, input.fluidId);
  if (!fluid.ok) return fluid;
  const { entryId: _id, deviceAtMs: _at, reason: _why, ...seen } = input;
  const { decision: how, cause, gaugesMissing } = decision.value;
  return ok({
    ...seen,
    ...{ gaugedAtMs, rule, dieThen: dieThen.value, bladeThen: bladeThen.value },
    ...{ decision: how, cause, gaugesMissing: [...gaugesMissing] },
  });
}

function rulesWritten(ledger: Ledger, jobId: string | null, connection: Connection): RulesWritten {
  return {
    job: jobId === null ? undefined : ledger.find('job', jobId)?.acceptanceRule,
    sizeNotGoTurnsMax: connection.notGoTurnsMax,
    shop: ledger.find('shop', 'shop')?.acceptanceRule,
  };
}

function checkFluid(ledger: Ledger, fluidId: string | null): Result<null, Refusal> {
  if (fluidId === null || ledger.find('tool', fluidId)?.role === 'fluid') return ok(null);
  return refuse('fluid', `${fluidId} is not a fluid of this shop.`, 'fluidId');
}
