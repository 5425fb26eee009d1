import type { Day } from '../calendar/day';
import type { Blocker } from './blocker';
import { listCandidates } from './candidates';
import type { PlanInput } from './check-plan';
import { type ComingPiece, comingPieces, restsOnComing } from './coming-pieces';
import type { SetNeed } from './complete-set';
import { indexCandidates } from './fitting-candidates';
import { linesThatGo } from './line-claims';
import { queueLines } from './line-order';
import type { LineVerdict } from './line-verdict';
import { type NeedStatus, needStatuses } from './need-status';

/** One row of a line's checklist: a need, and what meets it or what is in the way. */
export interface NeedCheck {
  readonly need: SetNeed;
  /**
   * Coming: met by the line's start, but only by what is not here today. At risk: there is something to use, but the life
   * in it may not last.
   */
  readonly state: 'met' | 'coming' | 'at-risk' | 'not-met';
  /** Tools that can be used from the start through the due day; what is out with this line first, then by ID. */
  readonly toolIds: readonly string[];
  /** Pieces on order that come in time. */
  readonly onOrderCount: number;
  /** Those of both that are not here today, the soonest first. */
  readonly coming: readonly ComingPiece[];
  /** Most limiting first. */
  readonly blockers: readonly Blocker[];
}

type Asked = Pick<LineVerdict, 'lineId' | 'blockers'>;

/**
 * The complete set that one line needs, in bench order, each need with the tools that meet it or with its blockers. For
 * the page of a line and the list to take to the crib. Says the same as the verdict: `verdict` must come from the same
 * plan. Empty for a line with no ends left to make, and for one that the plan does not hold.
 */
export function setChecklist(plan: PlanInput, verdict: Asked): NeedCheck[] {
  return checklistReader(plan)(verdict);
}

/** The same for many lines of one plan, which is made ready once. */
export function checklistReader(plan: PlanInput): (verdict: Asked) => NeedCheck[] {
  const { today, targets } = plan;
  const queue = queueLines(plan.lines, plan.connections, today);
  const lineDueOnDay = new Map(queue.map(({ line, dueOnDay }) => [line.lineId, dueOnDay]));
  const context = { today, lineDueOnDay, requiredProbability: targets?.requiredProbability };
  const findFitting = indexCandidates(listCandidates(plan.items, plan.arrivals, context));
  const statuses = queue.map((queued) => needStatuses(queued, findFitting));
  const goes = linesThatGo(queue, statuses, plan.draws);
  const at = new Map(queue.map(({ line }, i) => [line.lineId, i]));
  return ({ lineId, blockers }) => {
    const i = at.get(lineId);
    if (i === undefined) return [];
    const mine = new Set(plan.items.flatMap((item) => (item.heldForLineId === lineId ? [item.toolId] : [])));
    return (statuses[i] ?? []).map((status): NeedCheck => {
      const inTheWay = blockers.filter(({ role }) => role === status.need.role);
      const { need } = status;
      if (inTheWay.some(({ hard }) => hard))
        return { need, state: 'not-met', toolIds: [], onOrderCount: 0, coming: [], blockers: inTheWay };
      const waits = restsOnComing({ queue, statuses, goes }, i, need.role, today);
      return {
        need,
        state: inTheWay.length > 0 ? 'at-risk' : waits ? 'coming' : 'met',
        ...serving(status, mine, plan, today),
        blockers: inTheWay,
      };
    });
  };
}

function serving(
  status: NeedStatus,
  mine: ReadonlySet<string>,
  { items }: Pick<PlanInput, 'items'>,
  today: Day,
): Pick<NeedCheck, 'toolIds' | 'onOrderCount' | 'coming'> {
  const toolIds = status.usable.flatMap(({ toolId }) => (toolId === null ? [] : [toolId]));
  return {
    toolIds: toolIds.sort((a, b) => Number(mine.has(b)) - Number(mine.has(a)) || (a < b ? -1 : 1)),
    onOrderCount: status.usable.length - toolIds.length,
    coming: comingPieces(status, items, today),
  };
}
