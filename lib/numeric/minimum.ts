/** Where a function of one argument is least inside a bracket, and its value there. */
export interface Minimum {
  readonly at: number;
  readonly value: number;
  readonly iterations: number;
  readonly stoppedBy: 'width' | 'cap';
}

export interface MinimumOptions {
  readonly low: number;
  readonly high: number;
  /** Relative width of the bracket at which the search stops. Default 1e-9: below that a smooth minimum is level. */
  readonly tolerance?: number;
  /** Default 200. */
  readonly maxIterations?: number;
}

const GOLDEN = (3 - Math.sqrt(5)) / 2;

/**
 * Least value of a function that falls and then rises between `low` and `high` (golden section). For the cheapest age once
 * its neighbourhood is known. Never leaves its bracket. Source: formula (golden section search, Kiefer 1953).
 * @example findMinimum((x) => (x - 2) ** 2, { low: 0, high: 4 }).value // => 0
 */
export function findMinimum(f: (x: number) => number, options: MinimumOptions): Minimum {
  const { tolerance = 1e-9, maxIterations = 200 } = options;
  let [low, high] = [options.low, options.high];
  let left = low + GOLDEN * (high - low);
  let right = high - GOLDEN * (high - low);
  let [atLeft, atRight] = [f(left), f(right)];
  let iterations = 0;
  while (high - low > tolerance * (Math.abs(low) + Math.abs(high)) && iterations < maxIterations) {
    iterations += 1;
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = low + GOLDEN * (high - low);
      atLeft = f(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = high - GOLDEN * (high - low);
      atRight = f(right);
    }
  }
  const at = atLeft <= atRight ? left : right;
  return {
    at,
    value: Math.min(atLeft, atRight),
    iterations,
    stoppedBy: iterations < maxIterations ? 'width' : 'cap',
  };
}
