import { defaultLifePriors } from '@/lib/life/priors';
import { backtest } from '@/lib/score/backtest';
import { bandCoverage, type Coverage } from '@/lib/score/band-coverage';
import { brierScore } from '@/lib/score/brier';
import { reliabilityOf } from '@/lib/score/reliability';
import type { ScoredCase } from '@/lib/score/scored-case';
import { REACH_MATERIALS, simulateReach, type TrueLaw } from './reach-shop';

export const REACH_PRIORS = defaultLifePriors('die', {
  referenceMaterialId: 'ref',
  materials: REACH_MATERIALS,
});

/** One case under every forecaster. */
export interface ReachCase {
  readonly ours: ScoredCase;
  readonly knowing: ScoredCase;
  readonly fixedCount: ScoredCase;
  readonly wornSoFar: number;
  readonly band: { readonly low: number; readonly high: number };
  readonly lasted: { readonly ends: number; readonly exact: boolean } | undefined;
}

export interface ReachStudy {
  readonly law: TrueLaw;
  readonly shops: number;
  readonly truth: 'as-believed' | 'misjudged';
  readonly jobs: number;
  readonly readingShare?: number;
  readonly useReadings?: boolean;
  /** Jobs at the start of each shop that are not scored. */
  readonly skip?: number;
  readonly key?: string;
}

export function reachCases(study: ReachStudy): ReachCase[] {
  const { law, truth, shops, jobs, readingShare, useReadings, skip = 0, key = 'a' } = study;
  return Array.from({ length: shops }, (_, s) => s).flatMap((s) => {
    const shop = simulateReach({ key: `${key}:${jobs}:${s}`, law, truth, jobs, readingShare });
    const made = backtest({
      events: shop.events,
      priors: { die: REACH_PRIORS, blade: REACH_PRIORS },
      guesses: { die: shop.guesses, blade: [] },
      changeAtEnds: shop.changeAtEnds,
      useReadings,
      drawCount: 1024,
    });
    return made.slice(skip).flatMap((one): ReachCase[] => {
      const { probability, settled, fixedCount = 0, band } = one.prediction;
      if (settled === null || settled.outcome === null || band === undefined) return [];
      const { outcome } = settled;
      return [
        {
          ours: { probability, outcome },
          knowing: { probability: shop.truly(one), outcome },
          fixedCount: { probability: fixedCount, outcome },
          wornSoFar: one.wornSoFar,
          band,
          lasted: settled.lasted,
        },
      ];
    });
  });
}

export interface ReachFigures {
  readonly count: number;
  readonly baseRate: number;
  readonly widthError: number;
  readonly countError: number;
  readonly knowingWidthError: number;
  readonly brier: number;
  readonly knowingBrier: number;
  /** Brier above the knowing forecaster's, as a share of it; and the same expected over outcomes, with less noise. */
  readonly excess: number;
  readonly expectedExcess: number;
  readonly fixedCountBrier: number;
  readonly coverage: Coverage | undefined;
}

export function reachFigures(cases: readonly ReachCase[]): ReachFigures {
  const ours = cases.map((one) => one.ours);
  const knowing = cases.map((one) => one.knowing);
  const [brier, knowingBrier] = [brierScore(ours), brierScore(knowing)];
  const gap = cases.reduce((sum, one) => sum + (one.ours.probability - one.knowing.probability) ** 2, 0);
  const least = knowing.reduce((sum, { probability: p }) => sum + p * (1 - p), 0);
  return {
    count: cases.length,
    baseRate: ours.filter(({ outcome }) => outcome).length / cases.length,
    widthError: reliabilityOf(ours).calibrationError,
    countError: reliabilityOf(ours, { binning: 'equal-count' }).calibrationError,
    knowingWidthError: reliabilityOf(knowing).calibrationError,
    brier,
    knowingBrier,
    excess: brier / knowingBrier - 1,
    expectedExcess: gap / least,
    fixedCountBrier: brierScore(cases.map((one) => one.fixedCount)),
    coverage: bandCoverage(
      cases.flatMap(({ band, lasted }) => (lasted === undefined ? [] : [{ band, lasted }])),
    ),
  };
}
