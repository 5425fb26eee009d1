import { cutWith, type EdgeSupply, type EdgeTask, meanLife, overlaps, type TaskWork } from './edge-task';

/** Which tool each line is given, one tool to a line; a line left out has none. */
export type TaskPlan = ReadonlyMap<string, string>;

/**
 * What a plan is judged by, each before the next, all to be least:
 *
 *   unserved     lines that go without a tool: each counts n², and one that begins earlier up to n − 1 more (n lines in all), so
 *                that as many as can be are served, and of two that want the only die the one that begins first.
 *   endsAtRisk   Σ over the lines served of the ends that are expected not to be cut by the tool given, 0 where it lasts with
 *                the required probability. In hundredths of an end.
 *   lifeOpened   Σ over the tools given out of the life that they had left, in whole turns or mm³.
 *
 * So first every line gets a tool, then one that lasts, as far as there are any; then the most worn of those that do, so
 * that full edges stay whole for long jobs. A second line served by a tool already given out opens no further life.
 */
export interface Measure {
  readonly unserved: number;
  readonly endsAtRisk: number;
  readonly lifeOpened: number;
}

/** What each line counts for when it goes without. */
export type UnservedWeights = ReadonlyMap<string, number>;

/**
 * What each of n lines counts for when it goes without, in the order in which they are served: n² + n − 1 − place. All the
 * places together come to less than n², so two lines never count less than one. Lines that are solved apart keep the weights that
 * they have among all. Source: formula.
 */
export function unservedWeights(tasks: readonly EdgeTask[]): UnservedWeights {
  const n = tasks.length;
  return new Map(tasks.map(({ lineId }, at) => [lineId, n * n + n - 1 - at]));
}

/** Ends at risk of one task with a tool, in hundredths. */
export function endsAtRisk(task: EdgeTask, work: TaskWork): number {
  if (work.probability >= task.required - 1e-12) return 0;
  return Math.max(1, Math.ceil(100 * (task.ends - work.madeEnds)));
}

/** Negative when `a` is better. */
export function compareMeasures(a: Measure, b: Measure): number {
  return a.unserved - b.unserved || a.endsAtRisk - b.endsAtRisk || a.lifeOpened - b.lifeOpened;
}

/** A plan played through in the order of the tasks. */
export interface PlayedPlan {
  readonly measure: Measure;
  /** By line: what its tool does for it. Lines without a tool are missing. */
  readonly work: ReadonlyMap<string, TaskWork>;
  /** By tool: what is left of it after all. */
  readonly left: ReadonlyMap<string, Float64Array>;
  /** By line: what its tool had left when the line began. */
  readonly before: ReadonlyMap<string, Float64Array>;
}

/** Plays a plan through on the draws. `tasks` in the order in which they are served. */
export function playPlan(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  plan: TaskPlan,
  weights: UnservedWeights = unservedWeights(tasks),
): PlayedPlan {
  const lives = new Map(supplies.map(({ toolId, life }) => [toolId, life]));
  const left = new Map<string, Float64Array>();
  const before = new Map<string, Float64Array>();
  const work = new Map<string, TaskWork>();
  let [unserved, atRisk, opened] = [0, 0, 0];
  tasks.forEach((task) => {
    const toolId = plan.get(task.lineId);
    const life = toolId === undefined ? undefined : (left.get(toolId) ?? lives.get(toolId));
    if (toolId === undefined || life === undefined) {
      unserved += weights.get(task.lineId) as number;
      return;
    }
    if (!left.has(toolId)) opened += Math.round(meanLife(life));
    const after = Float64Array.from(life);
    const done = cutWith(after, task);
    before.set(task.lineId, life);
    work.set(task.lineId, done);
    left.set(toolId, after);
    atRisk += endsAtRisk(task, done);
  });
  return { measure: { unserved, endsAtRisk: atRisk, lifeOpened: opened }, work, left, before };
}

/** Whether a plan gives a tool to two lines at a time, or to a line that it does not serve. For tests and invariants. */
export function planFault(tasks: readonly EdgeTask[], plan: TaskPlan): string | null {
  for (const [i, task] of tasks.entries()) {
    const toolId = plan.get(task.lineId);
    if (toolId === undefined) continue;
    if (!task.toolIds.includes(toolId)) return `${toolId} does not serve ${task.lineId}`;
    const other = tasks
      .slice(i + 1)
      .find((later) => plan.get(later.lineId) === toolId && overlaps(task, later));
    if (other !== undefined) return `${toolId} is given to ${task.lineId} and ${other.lineId} at a time`;
  }
  return null;
}
