import type { LifeDraws } from '../ensemble/life-draws';
import { EDGE_KINDS, ROLES, type Role } from '../shop/vocabulary';
import { type ClaimRefusal, claimItems } from './claim-items';
import type { QueuedLine } from './line-order';
import { isStopped, type NeedStatus } from './need-status';

/** Whether the futures know how the line's material wears every edge that it needs. */
export function isMaterialKnown({ line, needs }: QueuedLine, draws: LifeDraws): boolean {
  return EDGE_KINDS.every(
    (kind) =>
      !needs.some(({ role }) => role === kind) || draws.materialFactor(kind, line.materialId) !== undefined,
  );
}

/** Which lines are cut and so hold what they need: those with a table row, a known material and a date for every need. */
export function linesThatGo(
  queue: readonly QueuedLine[],
  statuses: readonly (readonly NeedStatus[])[],
  draws: LifeDraws,
): boolean[] {
  return queue.map(
    (queued, i) =>
      queued.line.asksOnly !== true &&
      queued.hasTableRow &&
      isMaterialKnown(queued, draws) &&
      !isStopped(statuses[i] ?? []),
  );
}

/** Settles role by role who has what when dates overlap. One map of refusals per line, by role. */
export function claimByRole(
  queue: readonly QueuedLine[],
  statuses: readonly (readonly NeedStatus[])[],
  goes: readonly boolean[],
): Map<Role, ClaimRefusal>[] {
  const refusals = queue.map(() => new Map<Role, ClaimRefusal>());
  for (const role of ROLES) {
    const claims = queue.flatMap(({ line, startOnDay, dueOnDay }, i) => {
      const status = statuses[i]?.find(({ need }) => need.role === role && need.heldByLine);
      if (status === undefined) return [];
      const holds = goes[i] === true;
      return [{ i, claim: { lineId: line.lineId, startOnDay, dueOnDay, usable: status.usable, holds } }];
    });
    claimItems(claims.map(({ claim }) => claim)).forEach((refusal, at) => {
      const i = claims[at]?.i;
      if (refusal !== null && i !== undefined) refusals[i]?.set(role, refusal);
    });
  }
  return refusals;
}
