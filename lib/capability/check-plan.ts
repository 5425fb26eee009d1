import type { Day } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { invariant } from '../invariant';
import { EDGE_KINDS } from '../shop/vocabulary';
import { listCandidates } from './candidates';
import { walkEdge } from './edge-walk';
import { indexCandidates } from './fitting-candidates';
import { shareFluid } from './fluid-share';
import { lifeOutlook } from './life-outlook';
import { claimByRole, isMaterialKnown, linesThatGo } from './line-claims';
import { queueLines } from './line-order';
import type { LineVerdict } from './line-verdict';
import { lineVerdictOf } from './line-verdict-of';
import { needStatuses } from './need-status';
import {
  type Arrival,
  DEFAULT_TARGETS,
  type PlanConnection,
  type PlanLine,
  type PlanTargets,
  type SetItem,
} from './plan-input';
import { valuePolicy } from './value-policy';

export interface PlanInput {
  readonly today: Day;
  readonly lines: readonly PlanLine[];
  readonly connections: readonly PlanConnection[];
  readonly items: readonly SetItem[];
  readonly arrivals: readonly Arrival[];
  readonly draws: LifeDraws;
  readonly targets?: PlanTargets | undefined;
}

/**
 * Can the shop make this plan? For every line: can make, at risk or cannot make now, with every blocker named, most
 * limiting first, and the day on which each clears where one is known. In queue order: start, due day, line id.
 *
 * Hard needs are yes or no: the complete set is there, of the right hand, free from the line's start through its due
 * day, gauges in calibration to the end of the due day, fluid permitted, in date and enough. Soft needs are lives,
 * counted over the draws. Lines before a line are served before it. A line that cannot be cut and has no date for it
 * holds nothing back from those after it; one that is only delayed keeps its place, its edges and its fluid.
 *
 * The figures never depend on the order of the inputs. Another tool in the crib never worsens a line, with one honest
 * exception: it may set a stopped line going, which then takes what it needs before the lines after it. So it is with an
 * order that comes earlier: the first i lines together never get less, though one of them may now be the one served.
 */
export function checkPlan(input: PlanInput): LineVerdict[] {
  const { today, draws, targets = DEFAULT_TARGETS } = input;
  invariant(draws.drawCount > 0, 'checkPlan requires at least 1 draw');
  const queue = queueLines(input.lines, input.connections, today);
  const lineDueOnDay = new Map(queue.map(({ line, dueOnDay }) => [line.lineId, dueOnDay]));
  const context = { today, lineDueOnDay, requiredProbability: targets.requiredProbability };
  const findFitting = indexCandidates(listCandidates(input.items, input.arrivals, context));
  const statuses = queue.map((queued) => needStatuses(queued, findFitting));
  const materialKnown = queue.map((queued) => isMaterialKnown(queued, draws));
  const goes = linesThatGo(queue, statuses, draws);
  const refusals = claimByRole(queue, statuses, goes);
  const fluids = shareFluid(queue, statuses, goes);
  const walks = EDGE_KINDS.map((kind) => walkEdge(kind, queue, statuses, goes, draws, today));
  return queue.map((queued, i) => {
    const requiredProbability = queued.line.requiredProbability ?? targets.requiredProbability;
    const edges = walks.flatMap((walk) => walk[i] ?? []);
    return lineVerdictOf({
      queued,
      statuses: statuses[i] ?? [],
      refusals: refusals[i] ?? new Map(),
      fluid: fluids[i],
      outlook: materialKnown[i]
        ? lifeOutlook(edges, queued.line.endsToMake, requiredProbability, today)
        : undefined,
      materialKnown: materialKnown[i] === true,
      policy: valuePolicy(queued, statuses[i] ?? [], draws, requiredProbability),
      requiredProbability,
      floorProbability: targets.floorProbability,
    });
  });
}
