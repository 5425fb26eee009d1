import { endEdge, renewEdge } from '../../db/commands/end-edge';
import { issueTool, returnTool } from '../../db/commands/issue-tool';
import { countDrops, disposeFluid, openFluid, readFluidLevel } from '../../db/commands/keep-fluid';
import { logCut } from '../../db/commands/log-cut';
import { moveTool } from '../../db/commands/move-tool';
import { receiveTool } from '../../db/commands/receive-tool';
import { recordCalibration } from '../../db/commands/record-calibration';
import { setFluidLot } from '../../db/commands/set-fluid-lot';
import type { EndEdge, LogCut, MoveTool, ReceiveTool, RecordCalibration } from '../../lib/shop/command-input';
import type { CountDrops, DisposeFluid } from '../../lib/shop/fluid-input';
import type { FluidLot } from '../../lib/shop/fluid-lot';
import { type Act, act } from './act';
import { gaugeReady } from './gauge-room';
import { pastOrderOf } from './past-orders';
import { actorOf, type PersonId } from './people';
import { saidOfTool } from './said';

/** Who did something to which tool, when, and why where that matters. */
export interface Deed {
  readonly atMs: number;
  readonly by: PersonId;
  readonly toolId: string;
  readonly reason?: string;
  /** Tells two like deeds to one tool apart. */
  readonly mark?: string | number;
}

type About = 'entryId' | 'deviceAtMs' | 'reason' | 'toolId';

function when(what: string, { atMs, by, toolId, reason, mark = '' }: Deed) {
  return { atMs, by: actorOf(by), name: `${what} ${toolId} ${mark}`, reason: reason ?? '' };
}

/** A tool comes into the crib; `receipt` says only what is not plain. */
export function receive(
  deed: Deed,
  receipt: Pick<ReceiveTool, 'partId' | 'receivedOnDay'> & Partial<ReceiveTool>,
): Act {
  const plain = { hand: null, lot: '', opening: { known: 'new' }, orderId: null } as const;
  const dates = { dueOnDay: null, expiresOnDay: null, openedOnDay: null, levelMl: null };
  const orderId = receipt.orderId ?? pastOrderOf(deed.toolId);
  return act(when('receive', deed), 'receive-tool', (db, permit, entered, env) =>
    receiveTool(
      db,
      permit,
      { ...plain, ...dates, ...receipt, ...entered, toolId: deed.toolId, orderId },
      env,
    ),
  );
}

/** A row of the cut log; `row` says only what is not plain. */
export function cut(
  deed: Deed,
  row: Pick<LogCut, 'connectionId' | 'materialId' | 'heat' | 'ends' | 'goodEnds' | 'jobLineId' | 'rejects'> &
    Partial<Pick<LogCut, 'fluidId'>>,
): Act {
  const plain = { threadLength: null, dry: false, rework: false, fluidId: null, cutAtMs: deed.atMs };
  return act(when('cut', deed), 'log-cut', (db, permit, entered, env) =>
    logCut(db, permit, { ...plain, ...row, ...entered, toolId: deed.toolId }, env),
  );
}

export function issue(deed: Deed, to: PersonId, jobLineId: string | null, bench: string): Act {
  const input = { toPersonId: to, jobLineId, bench, toolId: deed.toolId };
  return act(when('issue', deed), 'issue-tool', (db, permit, entered, env) =>
    issueTool(db, permit, { ...input, ...entered, shown: saidOfTool(db, env.nowMs, input) }, env),
  );
}

export function giveBack(deed: Deed, condition: 'ok' | 'dull' | 'damaged' | 'unsure' = 'ok'): Act {
  return act(when('return', deed), 'return-tool', (db, permit, entered, env) =>
    returnTool(db, permit, { ...entered, condition, toolId: deed.toolId }, env),
  );
}

export function move(
  deed: Deed,
  { to, backOnDay = null }: { to: MoveTool['to']; backOnDay?: string | null },
): Act {
  return act(when(`move to ${to}`, deed), 'move-tool', (db, permit, entered, env) =>
    moveTool(db, permit, { ...entered, to, backOnDay, toolId: deed.toolId }, env),
  );
}

export function endOfEdge(deed: Deed, end: Omit<EndEdge, About>): Act {
  return act(when('end of edge', deed), 'end-edge', (db, permit, entered, env) =>
    endEdge(db, permit, { ...entered, ...end, toolId: deed.toolId }, env),
  );
}

/** Back with a new edge, its first-off passed on the cone gauge of that size that lies ready. */
export function newEdge(deed: Deed, onDay: string, connectionId: string): Act {
  return act(when('new edge', deed), 'renew-edge', (db, permit, entered, env) => {
    const gaugeIds = [gaugeReady(db, { connectionId, role: 'cone-gauge', onDay }) ?? ''];
    return renewEdge(
      db,
      permit,
      { ...entered, onDay, toolId: deed.toolId, firstOff: 'passed', gaugeIds },
      env,
    );
  });
}

/** The same with its first-off still to be gauged. */
export function newEdgeUnproved(deed: Deed, onDay: string): Act {
  return act(when('new edge', deed), 'renew-edge', (db, permit, entered, env) =>
    renewEdge(db, permit, { ...entered, onDay, toolId: deed.toolId, firstOff: 'owed', gaugeIds: [] }, env),
  );
}

export function calibrate(deed: Deed, calibration: Omit<RecordCalibration, About>): Act {
  return act(when('calibrate', deed), 'record-calibration', (db, permit, entered, env) =>
    recordCalibration(db, permit, { ...entered, ...calibration, toolId: deed.toolId }, env),
  );
}

export function open(deed: Deed, onDay: string): Act {
  return act(when('open', deed), 'keep-fluid', (db, permit, entered, env) =>
    openFluid(db, permit, { ...entered, onDay, toolId: deed.toolId }, env),
  );
}

export function readLevel(deed: Deed, levelMl: number, onDay: string): Act {
  return act(when('read level', deed), 'keep-fluid', (db, permit, entered, env) =>
    readFluidLevel(db, permit, { ...entered, levelMl, onDay, toolId: deed.toolId }, env),
  );
}

export function countOfDrops(deed: Deed, count: Omit<CountDrops, About>): Act {
  return act(when('count drops', deed), 'keep-fluid', (db, permit, entered, env) =>
    countDrops(db, permit, { ...entered, ...count, toolId: deed.toolId }, env),
  );
}

export function dispose(deed: Deed, disposal: Omit<DisposeFluid, About>): Act {
  return act(when('dispose of', deed), 'keep-fluid', (db, permit, entered, env) =>
    disposeFluid(db, permit, { ...entered, ...disposal, toolId: deed.toolId }, env),
  );
}

/** What is written down of a lot; the deed names it by the first bottle of it. */
export function lot(deed: Deed, facts: FluidLot): Act {
  return act(when('lot', deed), 'keep-fluid', (db, permit, entered, env) =>
    setFluidLot(db, permit, { ...entered, lot: facts }, env),
  );
}
