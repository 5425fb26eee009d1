import { assign } from '../numeric/assignment';
import { cutWith, type EdgeSupply, type EdgeTask, meanLife, overlaps, toolWork } from './edge-task';
import { endsAtRisk, type TaskPlan, type UnservedWeights, unservedWeights } from './objective';

/**
 * Tools for lines that want them at the same time, wave by wave: a wave is the lines that all run on one day, from the
 * first that is not served on; within it the objective is met exactly, as an assignment; the next wave finds what is left.
 * Where all lines overlap there is one wave, and the plan is the best there is.
 * `tasks` in the order in which they are served. Source: formula (linear sum assignment).
 */
export function wavePlan(
  tasks: readonly EdgeTask[],
  supplies: readonly EdgeSupply[],
  weights: UnservedWeights = unservedWeights(tasks),
): TaskPlan {
  const left = new Map(supplies.map(({ toolId, life }) => [toolId, Float64Array.from(life)]));
  const opened = new Set<string>();
  const plan = new Map<string, string>();
  for (let from = 0; from < tasks.length; ) {
    const wave = waveFrom(tasks, from);
    const running = tasks.slice(0, from);
    for (const [lineId, toolId] of assignWave(wave, running, { left, opened, plan, weights }))
      plan.set(lineId, toolId);
    for (const task of wave) {
      const toolId = plan.get(task.lineId);
      const life = toolId === undefined ? undefined : left.get(toolId);
      if (toolId === undefined || life === undefined) continue;
      cutWith(life, task);
      opened.add(toolId);
    }
    from += wave.length;
  }
  return plan;
}

function waveFrom(tasks: readonly EdgeTask[], from: number): EdgeTask[] {
  const wave: EdgeTask[] = [];
  for (const task of tasks.slice(from)) {
    if (wave.some((other) => !overlaps(other, task))) break;
    wave.push(task);
  }
  return wave;
}

interface WaveState {
  readonly left: ReadonlyMap<string, Float64Array>;
  readonly opened: ReadonlySet<string>;
  readonly plan: TaskPlan;
  readonly weights: UnservedWeights;
}

function assignWave(
  wave: readonly EdgeTask[],
  running: readonly EdgeTask[],
  { left, opened, plan, weights }: WaveState,
): [string, string][] {
  const toolIds = [...new Set(wave.flatMap((task) => task.toolIds))].filter((id) => left.has(id)).sort();
  const life = lifeToOpen(toolIds, left, opened);
  const perEnd = 1 + life.reduce((sum, amount) => sum + amount, 0);
  const perLine = perEnd * (1 + wave.reduce((sum, { ends }) => sum + 100 * ends, 0));
  const costs = wave.map((task, i) => {
    const busy = new Set(
      running.flatMap((other) => (overlaps(other, task) ? (plan.get(other.lineId) ?? []) : [])),
    );
    const withTool = toolIds.map((toolId, j) => {
      const has = left.get(toolId);
      if (has === undefined || busy.has(toolId) || !task.toolIds.includes(toolId)) return Infinity;
      const [work = { probability: 0, madeEnds: 0 }] = toolWork(has, [task]).work;
      return endsAtRisk(task, work) * perEnd + (life[j] as number);
    });
    // A line may also go without, in a column of its own.
    const weight = weights.get(task.lineId) as number;
    const without = wave.map((_, k) => (k === i ? weight * perLine : Infinity));
    return [...withTool, ...without];
  });
  return assign(costs).columnOfRow.flatMap((column, i): [string, string][] => {
    const [task, toolId] = [wave[i], toolIds[column]];
    return task === undefined || toolId === undefined ? [] : [[task.lineId, toolId]];
  });
}

/** Steps into which all the life of a wave is divided at most, so that costs stay whole numbers that are held exactly. */
const LIFE_STEPS = 20_000;

function lifeToOpen(
  toolIds: readonly string[],
  left: ReadonlyMap<string, Float64Array>,
  opened: ReadonlySet<string>,
): number[] {
  const means = toolIds.map((id) => (opened.has(id) ? 0 : meanLife(left.get(id) ?? new Float64Array(1))));
  const unit = Math.max(1, means.reduce((sum, mean) => sum + mean, 0) / LIFE_STEPS);
  return means.map((mean) => Math.round(mean / unit));
}
