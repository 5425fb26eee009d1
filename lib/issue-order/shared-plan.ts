import { cutWith, type EdgeSupply, type EdgeTask, meanLife, overlaps } from './edge-task';
import { endsAtRisk, type TaskPlan, unservedWeight } from './objective';

/** Lines, and sets of lines to a tool, up to which every way of sharing the tools is looked at. */
const TASKS_MAX = 8;
const SETS_MAX = 3000;

/** A set of lines that one tool can serve one after another, as bits; what it saves, and the life that it opens. */
interface Serving {
  readonly lines: number;
  readonly saved: number;
  readonly opened: number;
}

/**
 * The best plan of all in which every line has one tool, where a tool may serve several lines one after another: the
 * objective is met exactly, by dynamic programming over sets of lines. Undefined where there are too many lines to look at
 * them all. `tasks` in the order in which they are served. Source: formula (Bellman; best split of a set among the tools).
 */
export function sharedPlan(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
): TaskPlan | undefined {
  if (tasks.length > TASKS_MAX) return undefined;
  const allowed = supplies.map((supply) => setsOf(tasks, supply.toolId));
  if (allowed.reduce((sum, sets) => sum + sets.length, 0) > SETS_MAX) return undefined;
  const servings = supplies.map((supply) => servingsOf(tasks, supply));
  return bestSplit(tasks, supplies, servings);
}

/** All sets of lines, as bits, that a tool fits and that do not overlap. */
function setsOf(tasks: readonly EdgeTask[], toolId: string): number[] {
  let sets = [0];
  tasks.forEach((task, i) => {
    if (!task.toolIds.includes(toolId)) return;
    const free = sets.filter(
      (set) => !tasks.some((other, j) => (set & (1 << j)) !== 0 && overlaps(other, task)),
    );
    sets = [...sets, ...free.map((set) => set | (1 << i))];
  });
  return sets;
}

/** Every set that a tool can serve with what it saves: lines served first, then ends no longer at risk. */
function servingsOf(tasks: readonly EdgeTask[], { toolId, life }: EdgeSupply): Serving[] {
  const opened = Math.round(meanLife(life));
  const served = 1 + tasks.reduce((sum, { ends }) => sum + 100 * ends, 0);
  const servings: Serving[] = [];
  const extend = (set: number, from: number, left: Float64Array, before: number): void => {
    for (let i = from; i < tasks.length; i++) {
      const task = tasks[i] as EdgeTask;
      const clash = tasks.some((other, j) => (set & (1 << j)) !== 0 && overlaps(other, task));
      if (clash || !task.toolIds.includes(toolId)) continue;
      const after = Float64Array.from(left);
      const saved =
        before + unservedWeight(i, tasks.length) * served - endsAtRisk(task, cutWith(after, task));
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
