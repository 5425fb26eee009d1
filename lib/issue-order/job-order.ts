import { invariant } from '../invariant';
import type { EdgeTask } from './edge-task';

/** Lines in one order of cutting, and what comes of it with the edges that are here. */
export interface JobOrder {
  readonly lineIds: readonly string[];
  /** Mean number of lines that are finished. */
  readonly finished: number;
  /** By line, in this order: share of the draws in which it is finished. */
  readonly probabilities: readonly number[];
}

/** Lines up to which every order is looked at; beyond, the shortest first. */
const ALL_ORDERS_MAX = 6;

/**
 * In which order to cut lines that live on the same edges when there may not be enough for all: every order, the one that
 * finishes most lines first, of equals the one nearest to the order given. `life`: what all the edges that they share have
 * left together in each draw; a line is finished when it and those before it are cut. For "which job first while the
 * dies are late?". With one material the shortest line first is the best in every single future (an exchange argument).
 * More than six lines: the order given and shortest first alone. Source: formula (counts over the draws).
 */
export function jobOrders(tasks: readonly EdgeTask[], life: Float64Array): JobOrder[] {
  invariant(tasks.length > 0, 'jobOrders requires at least 1 line');
  const orders = tasks.length <= ALL_ORDERS_MAX ? permutations(tasks) : [[...tasks], [...tasks].sort(byNeed)];
  return orders
    .map((order) => playOrder(order, life))
    .map((order, at) => ({ order, at }))
    .sort((a, b) => b.order.finished - a.order.finished || a.at - b.at)
    .map(({ order }) => order);
}

/** What one order of cutting comes to. */
export function playOrder(tasks: readonly EdgeTask[], life: Float64Array): JobOrder {
  const done = tasks.map(() => 0);
  for (let k = 0; k < life.length; k++) {
    let left = life[k] as number;
    for (const [i, { ends, perEnd }] of tasks.entries()) {
      left -= ends * (perEnd[k] as number);
      if (left < 0) break;
      done[i] = (done[i] as number) + 1;
    }
  }
  const probabilities = done.map((count) => count / life.length);
  return {
    lineIds: tasks.map(({ lineId }) => lineId),
    finished: probabilities.reduce((sum, share) => sum + share, 0),
    probabilities,
  };
}

/** All orders, the one given first. */
function permutations(tasks: readonly EdgeTask[]): EdgeTask[][] {
  if (tasks.length < 2) return [[...tasks]];
  return tasks.flatMap((first, i) =>
    permutations(tasks.filter((_, j) => j !== i)).map((rest) => [first, ...rest]),
  );
}

function byNeed(a: EdgeTask, b: EdgeTask): number {
  const need = ({ ends, perEnd }: EdgeTask) => ends * (perEnd[0] ?? 0);
  return need(a) - need(b);
}
