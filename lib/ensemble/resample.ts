/** Shares that sum to 1, and how many equally weighted draws they are worth. */
export interface ShareWeights {
  readonly shares: Float64Array;
  readonly effective: number;
  /** How far the weights were trusted: 1 in full, 0 not at all. */
  readonly trust: number;
}

/**
 * Importance weights from log weights, as shares, with their effective sample size 1/Σ w² (Kish). Where that is below
 * `floor`, the log weights are shrunk by the largest factor that brings it up to the floor: rather a little of the
 * approximation's bias than answers that hang on a few draws. Source: formula (truncated weights, Ionides 2008, in spirit).
 */
export function shareWeights(logWeights: Float64Array, floor = 0): ShareWeights {
  const full = sharesOf(logWeights, 1);
  if (full.effective >= floor) return { ...full, trust: 1 };
  let [low, high] = [0, 1];
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (sharesOf(logWeights, middle).effective >= floor) low = middle;
    else high = middle;
  }
  return { ...sharesOf(logWeights, low), trust: low };
}

function sharesOf(logWeights: Float64Array, trust: number): { shares: Float64Array; effective: number } {
  let most = Number.NEGATIVE_INFINITY;
  for (const value of logWeights) if (value > most) most = value;
  const shares = logWeights.map((value) => (trust === 0 ? 1 : Math.exp(trust * (value - most))));
  let total = 0;
  for (const value of shares) total += value;
  let squares = 0;
  for (let k = 0; k < shares.length; k++) {
    const share = (shares[k] as number) / total;
    shares[k] = share;
    squares += share * share;
  }
  return { shares, effective: 1 / squares };
}

/**
 * Which draws to keep so that `count` equally weighted ones stand for the weighted ones: systematic resampling, one pick
 * at the middle of each of `count` equal steps through the shares laid end to end in the order of `along`. So what the
 * draws say about `along` keeps its even spread. The picks are returned in the order of the draws.
 * Source: formula (Kitagawa 1996, systematic resampling; midpoints in place of one random start).
 */
export function systematicPicks(shares: Float64Array, along: ArrayLike<number>, count: number): Uint32Array {
  const order = Uint32Array.from(shares, (_, k) => k).sort(
    (a, b) => (along[a] as number) - (along[b] as number) || a - b,
  );
  const picks = new Uint32Array(count);
  let taken = 0;
  let reached = 0;
  for (const k of order) {
    reached += shares[k] as number;
    while (taken < count && (taken + 0.5) / count < reached) picks[taken++] = k;
  }
  while (taken < count) picks[taken++] = order[order.length - 1] as number;
  return picks.sort();
}
