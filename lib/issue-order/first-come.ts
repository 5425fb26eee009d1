import { cutWith, type EdgeSupply, type EdgeTask, meanLife, overlaps } from './edge-task';
import type { TaskPlan } from './objective';

/**
 * What happens where nobody plans it: each line in start order takes the fullest tool that is free when it begins. The
 * yardstick for what planning the issues gains. `tasks` in the order in which they are served. Source: definition.
 */
export function firstComePlan(tasks: readonly EdgeTask[], supplies: readonly EdgeSupply[]): TaskPlan {
  const left = new Map(supplies.map(({ toolId, life }) => [toolId, Float64Array.from(life)]));
  const plan = new Map<string, string>();
  tasks.forEach((task, i) => {
    const taken = new Set(
      tasks.slice(0, i).flatMap((other) => (overlaps(other, task) ? (plan.get(other.lineId) ?? []) : [])),
    );
    const free = task.toolIds.filter((toolId) => left.has(toolId) && !taken.has(toolId)).sort();
    let [fullest, most] = ['', -1];
    for (const toolId of free) {
      const has = meanLife(left.get(toolId) ?? new Float64Array());
      if (has > most) [fullest, most] = [toolId, has];
    }
    const life = left.get(fullest);
    if (life === undefined) return;
    plan.set(task.lineId, fullest);
    cutWith(life, task);
  });
  return plan;
}
