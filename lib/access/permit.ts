import { ok, type Refusal, type Result, refuse } from '../result';
import type { Actor } from './actor';

/** Everything that can be done to the shop's record, by name. */
export type Action =
  | 'set-up-shop'
  | 'receive-tool'
  | 'log-cut'
  | 'issue-tool'
  | 'return-tool'
  | 'move-tool'
  | 'end-edge'
  | 'renew-edge'
  | 'read-edge'
  | 'mark-tool'
  | 'record-calibration'
  | 'check-gauge'
  | 'set-aside-gauge'
  | 'set-gauge-interval'
  | 'file-certificate'
  | 'keep-fluid'
  | 'extend-fluid'
  | 'plan-job'
  | 'keep-orders'
  | 'approve-orders'
  | 'reverse-entry'
  | 'accept-ends'
  | 'ship-job'
  | 'keep-recalls'
  | 'settle-conflict'
  | 'import-file';

declare const granted: unique symbol;

/** Leave to do one action, made only by `permit`: a command that takes one cannot be called unchecked. */
export interface Permit<A extends Action = Action> {
  readonly actor: Actor;
  readonly action: A;
  readonly [granted]: true;
}

/** Decisions that a named role answers for. */
const ONLY_BY: Partial<Record<Action, readonly Actor['role'][]>> = {
  'extend-fluid': ['lead', 'quality', 'set-up'],
};

/**
 * The one door through which rights are asked. Today everyone whose name the shop knows may do everything, by choice
 * of name at a shared tablet; sign-in and rights by role change this function and nothing else.
 */
export function permit<A extends Action>(actor: Actor | null, action: A): Result<Permit<A>, Refusal> {
  if (actor === null) return refuse('who', 'Say who you are first: choose your name.');
  const roles = ONLY_BY[action];
  if (roles !== undefined && !roles.includes(actor.role))
    return refuse('role', 'This is decided by a lead or by quality: ask one of them.');
  return ok({ actor, action } as Permit<A>);
}
