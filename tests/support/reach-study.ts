import { defaultLifePriors } from '@/lib/life/priors';
import { backtest } from '@/lib/score/backtest';
import { baseRateOf, brierScore } from '@/lib/score/brier';
import { reliabilityOf } from '@/lib/score/reliability';
import type { ScoredCase } from '@/lib/score/scored-case';
import { REACH_MATERIALS, type ReachPlan, simulateReach } from './reach-shop';
import type { TrueLaw } from './reach-worlds';

export const REACH_PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: REACH_MATERIALS,
});

/** One case under every forecaster. */
export interface ReachCase {
  readonly ours: ScoredCase;
  readonly knowing: ScoredCase;
  readonly fixedCount: ScoredCase;
  /** The 10–90 % band of ends left, and the ends truly left. */
  readonly band: { readonly low: number; readonly high: number };
  readonly lasted: number;
  /** Chance that the band holds the ends left, by the true figures: the same with the luck of single lives taken out. */
  readonly holds: number;
  /** Names the shop: its cases hang together. */
  readonly shop: number;
}

export interface ReachStudy {
  readonly law: TrueLaw;
  readonly truth: ReachPlan['truth'];
  readonly shops: number;
  /** Jobs in each shop's log, and how many of the first are learnt from but not scored. */
  readonly jobs: number;
  readonly warmUpRows: number;
  readonly readingShare?: number;
  readonly useReadings?: boolean;
  /** Other shops of the same sort: names their chance. */
  readonly seed?: string;
}

/** Shops with hardly a worn die to their name, shops with some, and shops that have been at it for long. */
export const AGES = {
  young: { jobs: 30, warmUpRows: 0 },
  'half grown': { jobs: 110, warmUpRows: 80 },
  old: { jobs: 350, warmUpRows: 300 },
} as const;

/** Every settled prediction of so many simulated shops. Voided ones (incident, taken out while good) are left out. */
export function reachCases(study: ReachStudy): ReachCase[] {
  const { shops, jobs, warmUpRows, useReadings, seed = '' } = study;
  return Array.from({ length: shops }, (_, s) => s).flatMap((s) => {
    const shop = simulateReach({ ...study, key: `${seed}${jobs}:${s}` });
    const made = backtest({
      events: shop.events,
      priors: { die: REACH_PRIORS, blade: REACH_PRIORS },
      guesses: { die: shop.guesses, blade: [] },
      changeAtEnds: shop.changeAtEnds,
      ...{ warmUpRows, useReadings },
    });
    return made.flatMap((one): ReachCase[] => {
      const { probability, settled, fixedCount = 0, band } = one.prediction;
      const outcome = settled?.outcome;
      if (outcome === null || outcome === undefined || band === undefined) return [];
      return [
        {
          ours: { probability, outcome },
          knowing: { probability: shop.truly(one, one.prediction.what.ends ?? 0), outcome },
          fixedCount: { probability: fixedCount, outcome },
          ...{ band, lasted: shop.trulyLasts(one), shop: jobs * 1e6 + s },
          holds: shop.truly(one, band.low) - shop.truly(one, band.high + 1),
        },
      ];
    });
  });
}

export interface ReachFigures {
  readonly count: number;
  readonly baseRate: number;
  /** Calibration error over five bins of equal width, and of equal count; and the knowing forecaster's own, from chance. */
  readonly widthError: number;
  readonly countError: number;
  readonly knowingError: number;
  readonly brier: number;
  readonly knowingBrier: number;
  /** Brier above the knowing forecaster's as a share of it; and the same expected over the outcomes, with less noise. */
  readonly excess: number;
  readonly expectedExcess: number;
  readonly fixedCountBrier: number;
  /** Share of 10–90 % bands that held the ends truly left, and shares that fell short of it and went beyond. */
  readonly inBand: number;
  readonly short: number;
  readonly beyond: number;
  /** The first expected over the lives, and its standard error with the shops as the sample. */
  readonly holds: number;
  readonly holdsError: number;
}

export function reachFigures(cases: readonly ReachCase[]): ReachFigures {
  const ours = cases.map((one) => one.ours);
  const knowing = cases.map((one) => one.knowing);
  const [brier, knowingBrier] = [brierScore(ours), brierScore(knowing)];
  const gap = cases.reduce((sum, one) => sum + (one.ours.probability - one.knowing.probability) ** 2, 0);
  const least = knowing.reduce((sum, { probability: p }) => sum + p * (1 - p), 0);
  const share = (test: (one: ReachCase) => boolean): number => cases.filter(test).length / cases.length;
  const short = share(({ lasted, band }) => lasted < band.low);
  const beyond = share(({ lasted, band }) => lasted > band.high);
  return {
    count: cases.length,
    baseRate: baseRateOf(ours),
    widthError: reliabilityOf(ours).calibrationError,
    countError: reliabilityOf(ours, { binning: 'equal-count' }).calibrationError,
    knowingError: reliabilityOf(knowing).calibrationError,
    ...{ brier, knowingBrier },
    excess: brier / knowingBrier - 1,
    expectedExcess: gap / least,
    fixedCountBrier: brierScore(cases.map((one) => one.fixedCount)),
    ...{ inBand: 1 - short - beyond, short, beyond },
    ...heldOver(cases),
  };
}

function heldOver(cases: readonly ReachCase[]): { holds: number; holdsError: number } {
  const holds = cases.reduce((sum, one) => sum + one.holds, 0) / cases.length;
  const sums = new Map<number, number>();
  for (const one of cases) sums.set(one.shop, (sums.get(one.shop) ?? 0) + one.holds - holds);
  const m = sums.size;
  const squares = [...sums.values()].reduce((sum, value) => sum + value * value, 0);
  return { holds, holdsError: Math.sqrt((squares * m) / Math.max(1, m - 1)) / cases.length };
}
