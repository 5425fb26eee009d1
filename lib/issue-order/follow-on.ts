import { type EdgeSupply, type EdgeTask, meanLife } from './edge-task';

/** Edges for one line one after the other, when no single one is sure enough to last. */
export interface Succession {
  /** In the order in which they are cut with; the first is the tool given already. */
  readonly toolIds: readonly string[];
  /** Share of the draws in which together they cut every end. */
  readonly probability: number;
  /** Mean number of changes in the middle of the line. */
  readonly changes: number;
  /** By tool, what is left of it when the line is done. */
  readonly left: ReadonlyMap<string, Float64Array>;
}

/** More edges than this to one line are an order to place, not a plan of issue. */
const EDGES_MAX = 6;

/**
 * What else goes out with a line whose tool may not last: from the tools that no line is given, the fewest that bring it to
 * the required probability, of those the most worn. Each edge makes whole ends only: the end on which it wears out is
 * begun again with the next. Where all together do not suffice, as many as help.
 */
export function followOn(
  task: EdgeTask,
  first: EdgeSupply | undefined,
  spare: readonly EdgeSupply[],
): Succession {
  const used: EdgeSupply[] = first === undefined ? [] : [first];
  const free = [...spare].sort((a, b) => meanLife(a.life) - meanLife(b.life));
  let now = succession(task, used);
  while (now.probability < task.required - 1e-12 && used.length < EDGES_MAX && free.length > 0) {
    const tried = free.map((tool) => succession(task, [...used, tool]));
    const enough = tried.findIndex(({ probability }) => probability >= task.required - 1e-12);
    const at = enough >= 0 ? enough : free.length - 1;
    const [next] = free.splice(at, 1);
    const then = tried[at];
    if (next === undefined || then === undefined || !(then.probability > now.probability || enough >= 0))
      break;
    used.push(next);
    now = then;
  }
  return now;
}

/**
 * Chance that edges one after the other cut every end, and how often they are changed half way. Source: formula (counts over
 * the draws).
 */
export function succession({ ends, perEnd }: EdgeTask, supplies: readonly EdgeSupply[]): Succession {
  const draws = perEnd.length;
  const left = new Map(supplies.map(({ toolId, life }) => [toolId, Float64Array.from(life)]));
  let [done, changes] = [0, 0];
  for (let k = 0; k < draws; k++) {
    let togo = ends;
    const each = perEnd[k] as number;
    supplies.forEach(({ toolId, life }, i) => {
      if (togo <= 0) return;
      if (i > 0) changes += 1;
      const has = life[k] as number;
      const cut = has >= togo * each ? togo : Math.floor(has / each);
      const after = left.get(toolId);
      if (after) after[k] = cut === togo ? has - cut * each : 0;
      togo -= cut;
    });
    if (togo <= 0) done += 1;
  }
  return {
    toolIds: supplies.map(({ toolId }) => toolId),
    probability: done / draws,
    changes: changes / draws,
    left,
  };
}
