import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type {
  AccountPieces,
  AdjustDie,
  CheckFirstOff,
  FreeTool,
  ReserveTool,
} from '../../lib/shop/kit-input';
import { CALIBRATED_ROLES } from '../../lib/shop/vocabulary';
import { type Env, type Ledger, type Recorded, shopDay } from '../ledger/ledger';
import type { Db } from '../open';
import { findLine } from '../queries/jobs';
import { findToolId, recordToolEntry, unknownTool } from './tool-entry';

/** Keeps a tool for a line through a day: nobody issues it to another line meanwhile. */
export function reserveTool(
  db: Db,
  permit: Permit<'issue-tool'>,
  input: ReserveTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { jobLineId, untilDay } = input;
  const content = { kind: 'tool-reserved', payload: { jobLineId, untilDay } } as const;
  return recordToolEntry(db, permit, input, env, content, () => {
    if (untilDay < shopDay(env)) return refuse('day', 'That day is past.', 'untilDay');
    return findLine(db, jobLineId)?.jobStatus === 'open'
      ? ok(null)
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

/** The first end after a regrind or an adjustment, gauged: passed, or the tool is set aside. */
export function checkFirstOff(
  db: Db,
  permit: Permit<'read-edge'>,
  input: CheckFirstOff,
  env: Env,
): Result<Recorded, Refusal> {
  const { result, onDay } = input;
  const gaugeIds: string[] = [];
  for (const typed of input.gaugeIds) {
    const id = findToolId(db, typed);
    if (id === undefined) return unknownTool(typed, 'gaugeIds');
    gaugeIds.push(id);
  }
  const content = { kind: 'first-off-checked', payload: { result, onDay, gaugeIds } } as const;
  return recordToolEntry(db, permit, input, env, content, (ledger) => {
    const aside = gaugeIds.find((id) => !canGauge(ledger, id));
    if (aside !== undefined)
      return refuse(
        'gauge',
        `${aside} is no gauge in use here, or it is set aside. Take another one.`,
        'gaugeIds',
      );
    const outOfDate = gaugeIds.find((id) => (ledger.find('tool', id)?.dueOnDay ?? '') < onDay);
    return outOfDate === undefined
      ? ok(null)
      : refuse(
          'calibration',
          `${outOfDate} is out of calibration. Do not accept with this gauge.`,
          'gaugeIds',
        );
  });
}

/** Kept under calibration, in the crib or with somebody: not away, lost or set aside. */
function canGauge(ledger: Ledger, toolId: string): boolean {
  const tool = ledger.find('tool', toolId);
  const atHand = tool?.state === 'in-crib' || tool?.state === 'issued';
  return tool !== undefined && atHand && CALIBRATED_ROLES.includes(tool.role);
}
