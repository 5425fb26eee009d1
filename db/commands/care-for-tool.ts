import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type {
  AccountPieces,
  AdjustDie,
  CheckFirstOff,
  FreeTool,
  ReserveTool,
} from '../../lib/shop/kit-input';
import { type Env, type Recorded, shopDay } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import type { Db } from '../open';
import { findLine } from '../queries/jobs';
import { checkFirstOffGauges, markedGauges } from './gauge/check-first-off-gauges';
import { decideToolEntry, recordToolEntry } from './tool-entry';

/** Keeps a tool for a line through a day: nobody issues it to another line meanwhile. */
export function reserveTool(
  db: Db,
  permit: Permit<'issue-tool'>,
  input: ReserveTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { jobLineId, untilDay } = input;
  const asked = { jobLineId, untilDay };
  const isSame = (entry: Entry) => entry.kind === 'tool-reserved' && holdsAll(entry.payload, asked);
  return decideToolEntry(db, permit, input, env, isSame, () => {
    const onDay = shopDay(env);
    if (untilDay < onDay) return refuse('day', 'That day is past.', 'untilDay');
    return findLine(db, jobLineId)?.jobStatus === 'open'
      ? ok({ kind: 'tool-reserved', payload: { ...asked, onDay } })
      : refuse('unknown-line', `${jobLineId} is not a line of an open job.`, 'jobLineId');
  });
}

/** Ends the keeping for a line. */
export function freeTool(
  db: Db,
  permit: Permit<'issue-tool'>,
  input: FreeTool,
  env: Env,
): Result<Recorded, Refusal> {
  return recordToolEntry(db, permit, input, env, { kind: 'tool-freed', payload: {} });
}

/** After a breakage: whether all pieces were found, and where. Giving up on one is for a lead or quality, with a reason. */
export function accountPieces(
  db: Db,
  permit: Permit<'return-tool'>,
  input: AccountPieces,
  env: Env,
): Result<Recorded, Refusal> {
  const { allFound, where } = input;
  const content = { kind: 'pieces-accounted', payload: { allFound, where } } as const;
  return recordToolEntry(db, permit, input, env, content, () => {
    const { role } = permit.actor;
    return allFound || role === 'lead' || role === 'quality'
      ? ok(null)
      : refuse(
          'approval',
          'Keep searching the tube, the bench and the floor; only a lead or quality ends the search.',
        );
  });
}

/** A split die opened or closed a touch: recorded, never a new life; a first-off is owed before its next end. */
export function adjustDie(
  db: Db,
  permit: Permit<'read-edge'>,
  input: AdjustDie,
  env: Env,
): Result<Recorded, Refusal> {
  const { direction, amount, onDay } = input;
  const content = { kind: 'die-adjusted', payload: { direction, amount, onDay } } as const;
  return recordToolEntry(db, permit, input, env, content, (ledger, toolId) => {
    const tool = ledger.find('tool', toolId);
    const part = tool === undefined ? undefined : ledger.find('part', tool.partId);
    return part?.role !== 'die' || part.adjustable
      ? ok(null)
      : refuse('adjustable', `${toolId} is a solid die; it cannot be adjusted.`);
  });
}

/**
 * The first end after a regrind or an adjustment, gauged: passed with the gauges named, or the tool is set aside. Looked at
 * without gauges it is on record, and stays owed.
 */
export function checkFirstOff(
  db: Db,
  permit: Permit<'read-edge'>,
  input: CheckFirstOff,
  env: Env,
): Result<Recorded, Refusal> {
  const { result, onDay } = input;
  const gauges = markedGauges(db, result === 'not-gauged' ? [] : input.gaugeIds);
  if (!gauges.ok) return gauges;
  const payload = { result, onDay, gaugeIds: gauges.value };
  const content = { kind: 'first-off-checked', payload } as const;
  return recordToolEntry(db, permit, input, env, content, (ledger, toolId) =>
    // What owes no first-off is refused by its own history, before anybody looks for gauges.
    ledger.find('tool', toolId)?.firstOffOwed === true
      ? checkFirstOffGauges(db, ledger, toolId, payload, env)
      : ok(null),
  );
}
