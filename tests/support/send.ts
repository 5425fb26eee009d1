import { correctCut } from '@/db/commands/correct-cut';
import { endEdge, renewEdge } from '@/db/commands/end-edge';
import { issueTool, returnTool } from '@/db/commands/issue-tool';
import { openFluid, readFluidLevel } from '@/db/commands/keep-fluid';
import { placeOrder, slipOrder } from '@/db/commands/keep-orders';
import { logCut } from '@/db/commands/log-cut';
import { moveTool } from '@/db/commands/move-tool';
import { closeJob, planJob } from '@/db/commands/plan-job';
import { receiveTool } from '@/db/commands/receive-tool';
import { recordCalibration } from '@/db/commands/record-calibration';
import { reverseEntry } from '@/db/commands/reverse-entry';
import type { Db } from '@/db/open';
import type { Result } from '@/lib/result';
import * as input from '@/lib/shop/command-input';
import { ENV, entered, HIGH, may } from './db';

type Fields = Readonly<Record<string, unknown>>;

/** The commands as a screen calls them: fields through the door, then the command, as Robin, at the test shop's hour. */
export function sender(db: Db) {
  const parse = <T>(schema: { parse: (fields: unknown) => T }, fields: Fields): T =>
    schema.parse({ ...entered(), ...fields });
  return {
    cut: (toolId: string, ends: number, over: Fields = {}, env = ENV) => {
      const row = { toolId, ends, goodEnds: ends, connectionId: HIGH.id, materialId: '316', ...over };
      return logCut(db, may('log-cut'), parse(input.LogCutInput, row), env);
    },
    receive: (fields: Fields) => {
      const receipt = { receivedOnDay: '2026-03-02', ...fields };
      return receiveTool(db, may('receive-tool'), parse(input.ReceiveToolInput, receipt), ENV);
    },
    issue: (toolId: string, over: Fields = {}) => {
      const fields = { toolId, toPersonId: 'ash', jobLineId: null, bench: '', ...over };
      return issueTool(db, may('issue-tool'), parse(input.IssueToolInput, fields), ENV);
    },
    giveBack: (toolId: string, over: Fields = {}) => {
      const fields = { toolId, condition: 'ok', ...over };
      return returnTool(db, may('return-tool'), parse(input.ReturnToolInput, fields), ENV);
    },
    move: (toolId: string, to: string, over: Fields = {}) => {
      const fields = { toolId, to, backOnDay: null, reason: 'a test', ...over };
      return moveTool(db, may('move-tool'), parse(input.MoveToolInput, fields), ENV);
    },
    end: (toolId: string, cause: string, to: string, over: Fields = {}) =>
      endEdge(db, may('end-edge'), parse(input.EndEdgeInput, { toolId, cause, to, ...over }), ENV),
    renew: (toolId: string, over: Fields = {}) => {
      const fields = { toolId, onDay: '2026-03-02', ...over };
      return renewEdge(db, may('renew-edge'), parse(input.RenewEdgeInput, fields), ENV);
    },
    calibrate: (toolId: string, over: Fields = {}) => {
      const fields = {
        toolId,
        onDay: '2026-03-02',
        result: 'pass',
        dueOnDay: '2027-03-01',
        certificate: '',
        ...over,
      };
      return recordCalibration(
        db,
        may('record-calibration'),
        parse(input.RecordCalibrationInput, fields),
        ENV,
      );
    },
    open: (toolId: string, onDay: string) =>
      openFluid(db, may('keep-fluid'), parse(input.OpenFluidInput, { toolId, onDay }), ENV),
    level: (toolId: string, levelMl: number) => {
      const fields = { toolId, levelMl, onDay: '2026-03-02' };
      return readFluidLevel(db, may('keep-fluid'), parse(input.ReadFluidLevelInput, fields), ENV);
    },
    reverse: (targetId: string, over: Fields = {}) => {
      const fields = { targetId, reason: 'a slip', ...over };
      return reverseEntry(db, may('reverse-entry'), parse(input.ReverseEntryInput, fields), ENV);
    },
    correct: (targetId: string, rightToolId: string | null, over: Fields = {}) => {
      const fields = { targetId, rightToolId, ...over };
      return correctCut(db, may('reverse-entry'), parse(input.CorrectCutInput, fields), ENV);
    },
    plan: (job: Fields, over: Fields = {}) =>
      planJob(db, may('plan-job'), parse(input.PlanJobInput, { job, ...over }), ENV),
    close: (jobId: string, how: string) =>
      closeJob(db, may('plan-job'), parse(input.CloseJobInput, { jobId, how }), ENV),
    order: (order: Fields, over: Fields = {}) =>
      placeOrder(db, may('keep-orders'), parse(input.PlaceOrderInput, { order, ...over }), ENV),
    slip: (orderId: string, expectedOnDay: string) =>
      slipOrder(db, may('keep-orders'), parse(input.SlipOrderInput, { orderId, expectedOnDay }), ENV),
  } satisfies Record<string, (...args: never[]) => Result<unknown>>;
}

/** A row of a kept table, by one column. */
export function row(
  db: Db,
  table: string,
  column: string,
  value: string,
): Record<string, unknown> | undefined {
  const sql = `SELECT * FROM ${table} WHERE ${column} = ?`;
  return db.$client.prepare(sql).get(value) as Record<string, unknown> | undefined;
}
