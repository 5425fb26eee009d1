import { clusteredInterval } from './clustered-interval';

/** A 80 % band of ends left as it was shown, and what the edge then lasted. */
export interface BandCase {
  readonly band: { readonly low: number; readonly high: number };
  readonly lasted: { readonly ends: number; readonly exact: boolean };
  /** The edge that it was about: all bands of one edge hang on one life. */
  readonly edge?: string | undefined;
}

export interface Coverage {
  readonly count: number;
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** Shares that fell short of the band and that went beyond it. */
  readonly short: number;
  readonly beyond: number;
}

/**
 * Share of bands that held what happened, with its 95 % interval (over edges, `clusteredInterval`). An edge that is only known to have lasted beyond the
 * upper end counts as beyond; one whose known life still lies within the band is left out, which of itself makes bands look
 * too narrow: read the coverage over edges that have ended. Undefined without a case. Source: formula.
 */
export function bandCoverage(cases: readonly BandCase[]): Coverage | undefined {
  const settled = cases.filter(({ band, lasted }) => lasted.exact || lasted.ends > band.high);
  const count = settled.length;
  if (count === 0) return undefined;
  const short = settled.filter(({ band, lasted }) => lasted.ends < band.low).length;
  const beyond = settled.filter(({ band, lasted }) => lasted.ends > band.high).length;
  const inside = count - short - beyond;
  return {
    ...{ count, share: inside / count, short: short / count, beyond: beyond / count },
    ...clusteredInterval(
      settled.map(({ band, lasted, edge }) => ({
        hit: lasted.ends >= band.low && lasted.ends <= band.high,
        edge,
      })),
    ),
  };
}
