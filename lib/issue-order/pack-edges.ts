import { invariant } from '../invariant';

/** Which items share a bin, by their place in the list given. */
export interface Packing {
  readonly bins: readonly (readonly number[])[];
  /** Fewer bins than this cannot do: the total over the capacity, rounded up. */
  readonly leastBins: number;
  /** True when it is proven that fewer bins cannot do. */
  readonly exact: boolean;
}

/** Search steps after which the best found so far is kept as it is. */
const STEPS_MAX = 200_000;

/**
 * Fewest edges of one capacity that jobs can be spread over when none may change its edge half way (bin packing). For
 * "how many fresh dies would this list take without a change in mid-job?".
 *
 *   fewest bins such that Σ weights in each ≤ capacity
 *
 * Weights and capacity in one unit: ends, turns or mm³. Domain: 0 ≤ weight ≤ capacity. Errors: throws outside it.
 * First fit decreasing, then branch and bound on the order of decreasing weights. Source: formula.
 * @example packEdges([5, 4, 4, 3, 2, 2], 10).bins.length // => 2
 */
export function packEdges(weights: readonly number[], capacity: number): Packing {
  const order = decreasing(weights, capacity);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const leastBins = Math.max(0, Math.ceil(sum / capacity - 1e-12));
  let best = firstFit(weights, order, capacity);
  let steps = 0;
  const loads: number[] = [];
  const bins: number[][] = [];
  let rest = sum;

  const search = (at: number): void => {
    if (best.length === leastBins || steps++ > STEPS_MAX) return;
    const item = order[at];
    if (item === undefined) {
      if (bins.length < best.length) best = bins.map((bin) => [...bin]);
      return;
    }
    const free = loads.reduce((room, load) => room + (capacity - load), 0);
    if (bins.length + Math.max(0, Math.ceil((rest - free) / capacity - 1e-12)) >= best.length) return;
    const weight = weights[item] as number;
    const tried = new Set<number>();
    rest -= weight;
    for (let b = 0; b < bins.length; b++) {
      const load = loads[b] as number;
      if (!fits(load, weight, capacity) || tried.has(load)) continue;
      tried.add(load);
      put(b, item, weight);
      search(at + 1);
      takeBack(b, load);
    }
    if (bins.length + 1 < best.length) {
      bins.push([]);
      loads.push(0);
      put(bins.length - 1, item, weight);
      search(at + 1);
      bins.pop();
      loads.pop();
    }
    rest += weight;
  };
  const put = (b: number, item: number, weight: number): void => {
    bins[b]?.push(item);
    loads[b] = (loads[b] as number) + weight;
  };
  const takeBack = (b: number, load: number): void => {
    bins[b]?.pop();
    loads[b] = load;
  };
  search(0);
  return { bins: best, leastBins, exact: best.length === leastBins || steps <= STEPS_MAX };
}

/**
 * First fit decreasing: the longest first, each into the first bin that holds it. Quick, and at times one bin too many.
 * @example firstFitDecreasing([5, 4, 4, 3, 2, 2], 10).length // => 3
 */
export function firstFitDecreasing(weights: readonly number[], capacity: number): number[][] {
  return firstFit(weights, decreasing(weights, capacity), capacity);
}

/** Sums of tenths are a hair off in binary figures: what fits but for that fits. */
function fits(load: number, weight: number, capacity: number): boolean {
  return load + weight <= capacity * (1 + 1e-12);
}

function decreasing(weights: readonly number[], capacity: number): number[] {
  invariant(capacity > 0 && Number.isFinite(capacity), 'packEdges requires a capacity above 0');
  for (const weight of weights)
    invariant(weight >= 0 && weight <= capacity, 'packEdges requires weights from 0 to the capacity');
  return weights.map((_, i) => i).sort((a, b) => (weights[b] as number) - (weights[a] as number) || a - b);
}

function firstFit(weights: readonly number[], order: readonly number[], capacity: number): number[][] {
  const bins: number[][] = [];
  const loads: number[] = [];
  for (const item of order) {
    const weight = weights[item] as number;
    let b = loads.findIndex((load) => fits(load, weight, capacity));
    if (b < 0) b = loads.push(0) - 1;
    const bin = bins[b] ?? [];
    bins[b] = bin;
    bin.push(item);
    loads[b] = (loads[b] as number) + weight;
  }
  return bins;
}
