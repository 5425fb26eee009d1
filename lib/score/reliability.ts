import { invariant } from '../invariant';
import { clusteredInterval } from './clustered-interval';
import type { Reliability, ReliabilityBin, ScoredCase } from './scored-case';

/** How cases are put into bins: five of the same width from 0 to 1, or of the same number of cases. */
export type Binning = 'equal-width' | 'equal-count';

/**
 * Reliability diagram: cases in bins by what was predicted, and in each what came true, with its 95 % interval, which
 * allows for cases that share an edge (`clusteredInterval`). The calibration error is Σ (count ÷ all)·|predicted − observed|. Empty bins are left out; equal counts keep cases of the
 * same probability in the order given. Domain: at least one case and one bin. Source: formula.
 */
export function reliabilityOf(
  cases: readonly ScoredCase[],
  { bins = 5, binning = 'equal-width' }: { bins?: number; binning?: Binning } = {},
): Reliability {
  invariant(cases.length > 0 && Number.isInteger(bins) && bins >= 1, 'a diagram needs cases and bins');
  const ordered = [...cases].sort((a, b) => a.probability - b.probability);
  const groups: ScoredCase[][] = Array.from({ length: bins }, () => []);
  ordered.forEach((scored, rank) => {
    const at = binning === 'equal-count' ? (rank * bins) / ordered.length : scored.probability * bins;
    groups[Math.min(bins - 1, Math.floor(at))]?.push(scored);
  });
  const filled = groups.filter((group) => group.length > 0).map(binOf);
  const error = filled.reduce(
    (sum, { count, predicted, observed }) => sum + count * Math.abs(predicted - observed),
    0,
  );
  return { bins: filled, calibrationError: error / cases.length };
}

function binOf(group: readonly ScoredCase[]): ReliabilityBin {
  const count = group.length;
  const hits = group.filter(({ outcome }) => outcome).length;
  const interval = clusteredInterval(group.map(({ outcome, edge }) => ({ hit: outcome, edge })));
  const predicted = group.reduce((sum, { probability }) => sum + probability, 0) / count;
  return { count, predicted, observed: hits / count, ...interval };
}
