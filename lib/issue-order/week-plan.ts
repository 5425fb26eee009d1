import { type Day, weekStartDay } from '../calendar';
import { assignTools } from './assign-tools';
import { type EdgeSupply, type EdgeTask, overlaps } from './edge-task';
import { followOn, type Succession } from './follow-on';
import type { PlayedPlan } from './objective';

/** One line with the tool proposed for it. */
export interface IssueLine {
  readonly task: EdgeTask;
  /** Null: no tool is free for it. */
  readonly toolId: string | null;
  /** What the tool had left when the line began. */
  readonly life: Float64Array | null;
  /** Chance that this one tool does it. */
  readonly probability: number;
  /** The tools one after the other where one is not sure enough; else that one alone. */
  readonly succession: Succession;
  /** What every tool that it might have had would have left at its start. */
  readonly lives: ReadonlyMap<string, Float64Array>;
}

/** The lines that begin in one week (Monday to Sunday), solved together. */
export interface IssueWeek {
  readonly fromDay: Day;
  readonly lines: readonly IssueLine[];
  readonly played: PlayedPlan;
  readonly firstCome: PlayedPlan;
}

/**
 * The issue order of the whole plan, week by week: the lines that begin in a week are solved together on what the weeks
 * before have left of the tools. `tasks` of one kind of edge in the order in which they are served.
 */
export function planWeeks(tasks: readonly EdgeTask[], supplies: readonly EdgeSupply[]): IssueWeek[] {
  const lives = new Map(supplies.map(({ toolId, life }) => [toolId, life]));
  const placed: { task: EdgeTask; toolIds: readonly string[] }[] = [];
  const weeks = [...new Set(tasks.map(({ startOnDay }) => weekStartDay(startOnDay)))].sort();
  return weeks.map((fromDay) => {
    const mine = tasks
      .filter(({ startOnDay }) => weekStartDay(startOnDay) === fromDay)
      .map((task) => withoutBusy(task, placed));
    const now = [...lives].map(([toolId, life]): EdgeSupply => ({ toolId, life }));
    const { plan, played, firstCome } = assignTools(mine, now);
    const given = new Set(plan.values());
    const lines = mine.map((task): IssueLine => {
      const toolId = plan.get(task.lineId) ?? null;
      const life = toolId === null ? null : (played.before.get(task.lineId) ?? null);
      const spare = now
        .filter(({ toolId: id }) => task.spareIds.includes(id) && !given.has(id) && isFree(id, task, placed))
        .map(({ toolId: id, life: whole }) => ({ toolId: id, life: lives.get(id) ?? whole }));
      const first = toolId === null || life === null ? undefined : { toolId, life };
      const chain = followOn(task, first, spare);
      placed.push({ task, toolIds: chain.toolIds });
      for (const id of chain.toolIds.slice(1)) lives.set(id, chain.left.get(id) ?? new Float64Array());
      return {
        ...{ task, toolId, life, succession: chain },
        probability: played.work.get(task.lineId)?.probability ?? 0,
        lives: new Map(now.map((tool) => [tool.toolId, tool.life])),
      };
    });
    for (const [toolId, left] of played.left) lives.set(toolId, left);
    return { fromDay, lines, played, firstCome: firstCome.played };
  });
}

function isFree(
  toolId: string,
  task: EdgeTask,
  placed: readonly { task: EdgeTask; toolIds: readonly string[] }[],
): boolean {
  return !placed.some((other) => other.toolIds.includes(toolId) && overlaps(other.task, task));
}

/** A line cannot have what a line of an earlier week still holds. */
function withoutBusy(
  task: EdgeTask,
  placed: readonly { task: EdgeTask; toolIds: readonly string[] }[],
): EdgeTask {
  const free = (toolId: string) => isFree(toolId, task, placed);
  return { ...task, toolIds: task.toolIds.filter(free), spareIds: task.spareIds.filter(free) };
}
