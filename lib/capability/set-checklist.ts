import { listCandidates } from './candidates';
import type { PlanInput } from './check-plan';
import type { SetNeed } from './complete-set';
import { indexCandidates } from './fitting-candidates';
import { queueLines } from './line-order';
import type { Blocker, LineVerdict } from './line-verdict';
import { needStatuses } from './need-status';

/** One row of a line's checklist: a need, and what meets it or what is in the way. */
export interface NeedCheck {
  readonly need: SetNeed;
  /** At risk: there is something to use, but the life in it may not last. */
  readonly state: 'met' | 'at-risk' | 'not-met';
  /** Tools that can be used from the start through the due day; what is out with this line first, then by ID. */
  readonly toolIds: readonly string[];
  /** Pieces on order that come in time. */
  readonly onOrderCount: number;
  /** Most limiting first. */
  readonly blockers: readonly Blocker[];
}

/**
 * The complete set that one line needs, in bench order, each need with the tools that meet it or with its blockers. For
 * the page of a line and the list to take to the crib. Says the same as the verdict: `verdict` must come from the same
 * plan. Empty for a line with no ends left to make, and for one that the plan does not hold.
 */
export function setChecklist(
  plan: Pick<PlanInput, 'today' | 'lines' | 'connections' | 'items' | 'arrivals'>,
  verdict: Pick<LineVerdict, 'lineId' | 'blockers'>,
): NeedCheck[] {
  const queue = queueLines(plan.lines, plan.connections, plan.today);
  const queued = queue.find(({ line }) => line.lineId === verdict.lineId);
  if (queued === undefined) return [];
  const lineDueOnDay = new Map(queue.map(({ line, dueOnDay }) => [line.lineId, dueOnDay]));
  const candidates = listCandidates(plan.items, plan.arrivals, { today: plan.today, lineDueOnDay });
  const mine = new Set(
    plan.items.flatMap((item) => (item.heldForLineId === verdict.lineId ? [item.toolId] : [])),
  );
  return needStatuses(queued, indexCandidates(candidates)).map(({ need, usable }): NeedCheck => {
    const blockers = verdict.blockers.filter(({ role }) => role === need.role);
    if (blockers.some(({ hard }) => hard))
      return { need, state: 'not-met', toolIds: [], onOrderCount: 0, blockers };
    const toolIds = usable.flatMap(({ toolId }) => (toolId === null ? [] : [toolId]));
    return {
      need,
      state: blockers.length > 0 ? 'at-risk' : 'met',
      toolIds: toolIds.sort((a, b) => Number(mine.has(b)) - Number(mine.has(a)) || (a < b ? -1 : 1)),
      onOrderCount: usable.length - toolIds.length,
      blockers,
    };
  });
}
