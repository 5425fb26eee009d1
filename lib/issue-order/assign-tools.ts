import { compareTasks, type EdgeSupply, type EdgeTask } from './edge-task';
import { firstComePlan } from './first-come';
import {
  compareMeasures,
  type PlayedPlan,
  playPlan,
  type TaskPlan,
  type UnservedWeights,
  unservedWeights,
} from './objective';
import { sharedPlan } from './shared-plan';
import { wavePlan } from './wave-plan';

/** Tools for the lines of a week, and what first-come would have come to on the same draws. */
export interface ToolAssignment {
  readonly plan: TaskPlan;
  readonly played: PlayedPlan;
  readonly firstCome: { readonly plan: TaskPlan; readonly played: PlayedPlan };
}

/**
 * Which tool goes to which line, one tool to a line, solved over all lines together. A tool may serve lines that follow one
 * another. The plan makes least, in this order, the ends at risk and the life opened (see `Measure`): exactly
 * where at most fourteen lines want the same tools (fewer where hardly any overlap, see `sharedPlan`), or all of them at the same time; else wave by wave. Never worse by that
 * measure than first-come, and where exact, another tool never makes it worse.
 * Lines that share no tool are solved apart. The order of the inputs changes nothing.
 */
export function assignTools(tasks: readonly EdgeTask[], supplies: readonly EdgeSupply[]): ToolAssignment {
  const queue = [...tasks].sort(compareTasks);
  const sorted = [...supplies].sort((a, b) => (a.toolId < b.toolId ? -1 : 1));
  const weights = unservedWeights(queue);
  const plan = new Map<string, string>();
  for (const group of groupsSharingTools(queue)) {
    const wanted = new Set(group.flatMap(({ toolIds }) => toolIds));
    const mine = sorted.filter(({ toolId }) => wanted.has(toolId));
    for (const [lineId, toolId] of bestOf(group, mine, weights)) plan.set(lineId, toolId);
  }
  const first = firstComePlan(queue, sorted);
  return {
    plan,
    played: playPlan(queue, sorted, plan),
    firstCome: { plan: first, played: playPlan(queue, sorted, first) },
  };
}

function bestOf(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  weights: UnservedWeights,
): TaskPlan {
  const exact = sharedPlan(tasks, supplies, { weights });
  if (exact !== undefined) return exact;
  const waves = wavePlan(tasks, supplies, weights);
  const first = firstComePlan(tasks, supplies);
  const measureOf = (plan: TaskPlan) => playPlan(tasks, supplies, plan, weights).measure;
  return compareMeasures(measureOf(first), measureOf(waves)) < 0 ? first : waves;
}

/** Lines that could want the same tool, directly or through others, together; in the order of the tasks. */
function groupsSharingTools(tasks: readonly EdgeTask[]): EdgeTask[][] {
  const groups: { toolIds: Set<string>; tasks: EdgeTask[] }[] = [];
  for (const task of tasks) {
    const met = groups.filter(({ toolIds }) => task.toolIds.some((id) => toolIds.has(id)));
    const joined = {
      toolIds: new Set([...met.flatMap(({ toolIds }) => [...toolIds]), ...task.toolIds]),
      tasks: [...met.flatMap((group) => group.tasks), task].sort(compareTasks),
    };
    for (const group of met) groups.splice(groups.indexOf(group), 1);
    groups.push(joined);
  }
  return groups.map((group) => group.tasks);
}
