import { cutWith, type EdgeSupply, type EdgeTask, meanLife, overlaps } from './edge-task';
import { endsAtRisk, type TaskPlan, type UnservedWeights, unservedWeights } from './objective';

/** How much is looked at: lines, sets of lines that single tools can serve, and steps of putting these together. */
export interface SharingLimits {
  readonly lines: number;
  readonly servings: number;
  readonly steps: number;
}

/** About a fifth of a second at the most; weeks of up to fourteen competing lines with some overlap stay within. */
const LIMITS: SharingLimits = { lines: 14, servings: 3_000, steps: 20_000_000 };

export interface SharingOptions {
  /** What each line counts for when it goes without, among more lines than these. */
  readonly weights?: UnservedWeights;
  readonly limits?: SharingLimits;
}

/** A set of lines that one tool can serve one after another, as bits; what it saves, and the life that it opens. */
interface Serving {
  readonly lines: number;
  readonly saved: number;
  readonly opened: number;
}

/**
 * The best plan of all in which every line has one tool, where a tool may serve several lines one after another: the
 * objective is met exactly, by dynamic programming over sets of lines. What a line costs a tool depends on the lines before it, so
 * no assignment of single lines to tools (Hungarian) is exact here; of lines that all overlap it is, and `wavePlan` is one.
 * Undefined where there is too much to look at. `tasks` in the order in which they are served.
 * Measured on 420 random weeks of 6 to 14 lines, 2 to 6 tools, six days: within the limits in every one. Waves or first-come, the better,
 * fall short of it in seven weeks of ten: by 1 to 2 ends at risk of some 200, and by a line in one week of fifteen (one of five with 13 or
 * 14 lines).
 * Source: formula (Bellman; best split of a set among the tools).
 */
export function sharedPlan(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  { weights = unservedWeights(tasks), limits = LIMITS }: SharingOptions = {},
): TaskPlan | undefined {
  if (tasks.length > limits.lines) return undefined;
  let count = 0;
  for (const { toolId } of supplies) {
    count += countSets(tasks, toolId, limits.servings - count);
    if (count > limits.servings || count * 2 ** tasks.length > limits.steps) return undefined;
  }
  const servings = supplies.map((supply) => servingsOf(tasks, supply, weights));
  return bestSplit(tasks, supplies, servings);
}

/** How many sets of lines that do not overlap a tool fits; one more than `most` where there are more. */
function countSets(tasks: readonly EdgeTask[], toolId: string, most: number): number {
  const mine = tasks.filter((task) => task.toolIds.includes(toolId));
  let sets: number[][] = [[]];
  for (const [i, task] of mine.entries()) {
    const free = sets.filter((set) => !set.some((j) => overlaps(mine[j] as EdgeTask, task)));
    sets = [...sets, ...free.map((set) => [...set, i])];
    if (sets.length - 1 > most) return most + 1;
  }
  return sets.length - 1;
}

/** Every set that a tool can serve with what it saves: lines served first, then ends no longer at risk. */
function servingsOf(
  tasks: readonly EdgeTask[],
  { toolId, life }: EdgeSupply,
  weights: UnservedWeights,
): Serving[] {
  const opened = Math.round(meanLife(life));
  const served = 1 + tasks.reduce((sum, { ends }) => sum + 100 * ends, 0);
  const servings: Serving[] = [];
  const extend = (set: number, from: number, left: Float64Array, before: number): void => {
    for (let i = from; i < tasks.length; i++) {
      const task = tasks[i] as EdgeTask;
      const clash = tasks.some((other, j) => (set & (1 << j)) !== 0 && overlaps(other, task));
      if (clash || !task.toolIds.includes(toolId)) continue;
      const after = Float64Array.from(left);
      const weight = weights.get(task.lineId) as number;
      const saved = before + weight * served - endsAtRisk(task, cutWith(after, task));
      servings.push({ lines: set | (1 << i), saved, opened });
      extend(set | (1 << i), i + 1, after, saved);
    }
  };
  extend(0, 0, life, 0);
  return servings;
}

function bestSplit(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  servings: readonly (readonly Serving[])[],
): TaskPlan {
  const sets = 1 << tasks.length;
  let [saved, opened] = [new Float64Array(sets), new Float64Array(sets)];
  const chosen = servings.map(() => new Int32Array(sets));
  servings.forEach((mine, j) => {
    const [nextSaved, nextOpened] = [Float64Array.from(saved), Float64Array.from(opened)];
    for (let set = 1; set < sets; set++) {
      for (const serving of mine) {
        if ((serving.lines & set) !== serving.lines) continue;
        const rest = set ^ serving.lines;
        const total = (saved[rest] as number) + serving.saved;
        const life = (opened[rest] as number) + serving.opened;
        const best = nextSaved[set] as number;
        if (total < best || (total === best && life >= (nextOpened[set] as number))) continue;
        nextSaved[set] = total;
        nextOpened[set] = life;
        (chosen[j] as Int32Array)[set] = serving.lines;
      }
    }
    [saved, opened] = [nextSaved, nextOpened];
  });
  return planOf(tasks, supplies, chosen);
}

/** Follows the choices back from the set of all lines. */
function planOf(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  chosen: readonly Int32Array[],
): TaskPlan {
  const plan = new Map<string, string>();
  let set = (1 << tasks.length) - 1;
  for (let j = supplies.length - 1; j >= 0; j--) {
    const lines = chosen[j]?.[set] as number;
    tasks.forEach((task, i) => {
      if ((lines & (1 << i)) !== 0) plan.set(task.lineId, supplies[j]?.toolId ?? '');
    });
    set ^= lines;
  }
  return plan;
}
