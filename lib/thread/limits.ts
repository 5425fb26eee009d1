import { FIXED_ONE, type Fixed, fixedOf, roundHalfUp, timesFixed } from '../numeric/fixed-decimal';
import {
  FLAT_ROOT,
  TABLE_PLACES as PLACES,
  ROUNDED_ROOT,
  type ThreadToLimit,
  threadBasis,
  TABLE_UNITS as UNITS,
} from './basis';
import { pitchTolerance2A, pitchTwoThirds } from './tolerance';
import type { ThreadSeries } from './unified-series';

/** Classes of an external thread: 1A loose (coarse and fine only), 2A the usual, 3A close. */
export const EXTERNAL_CLASSES = ['1A', '2A', '3A'] as const;
export type ExternalClass = (typeof EXTERNAL_CLASSES)[number];

/** Limits of size of an external thread, inches to four decimals. */
export interface ExternalLimits {
  readonly series: ThreadSeries;
  readonly engagementIn: number;
  readonly basicMajorIn: number;
  readonly basicPitchIn: number;
  readonly allowanceIn: number;
  readonly majorToleranceIn: number;
  readonly pitchToleranceIn: number;
  readonly majorMaxIn: number;
  readonly majorMinIn: number;
  /** Upper limit of the pitch diameter, which the GO ring guards as a functional size. */
  readonly pitchMaxIn: number;
  /** Lower limit, which the NOT GO ring guards. */
  readonly pitchMinIn: number;
  /** Minor diameter, at most, with the rounded root (UNR) and with the flat one (UN): for reference. */
  readonly minorMaxUnrIn: number;
  readonly minorMaxUnIn: number;
}

/** Multiples of the 2A pitch tolerance, of the major tolerance's coefficient, and whether an allowance is taken off. */
const CLASS = {
  '1A': { pitch: 1.5, major: 0.09, allowance: 0.3 },
  '2A': { pitch: 1, major: 0.06, allowance: 0.3 },
  '3A': { pitch: 0.75, major: 0.06, allowance: 0 },
} as const;

/**
 * Limits of size of an external unified thread: es = 0.300·Td₂(2A) (3A: 0); Td = 0.060·∛P² (1A: 0.090); Td₂ × 1.5, 1, 0.75
 * for 1A, 2A, 3A; d max = D − es; d min = d max − Td; d₂ max = D − 0.64951905·P − es; d₂ min = d₂ max − Td₂.
 * Rounding order of the tables: allowance and each tolerance to four decimals, half up, before anything is subtracted; exact
 * decimals throughout. Domain: size 0.05 to 6 in, 3 to 100 threads per inch, a thread less deep than its radius.
 * Errors: throws outside it. Source: published. ASME B1.1, formulas.
 * @example externalThreadLimits({ sizeIn: { num: 9, den: 16 }, tpi: 18 }, '2A').pitchMaxIn // => 0.525
 */
export function externalThreadLimits(thread: ThreadToLimit, threadClass: ExternalClass): ExternalLimits {
  const basis = threadBasis(thread);
  const rule = CLASS[threadClass];
  const td2 = pitchTolerance2A(basis);
  const units = {
    allowance: roundHalfUp(timesFixed(fixedOf(rule.allowance), td2), PLACES),
    majorTolerance: roundHalfUp(timesFixed(fixedOf(rule.major), pitchTwoThirds(basis.tpi)), PLACES),
    pitchTolerance: roundHalfUp(timesFixed(fixedOf(rule.pitch), td2), PLACES),
  };
  const major = basis.basicMajorUnits - units.allowance;
  const pitch = basis.basicPitchUnits - units.allowance;
  const below = (perPitch: Fixed) =>
    roundHalfUp((fixedOf(1) * BigInt(major)) / BigInt(UNITS) - timesFixed(perPitch, basis.pitch), PLACES);
  return {
    series: basis.series,
    engagementIn: Number(basis.engagement) / Number(FIXED_ONE),
    basicMajorIn: basis.basicMajorUnits / UNITS,
    basicPitchIn: basis.basicPitchUnits / UNITS,
    allowanceIn: units.allowance / UNITS,
    majorToleranceIn: units.majorTolerance / UNITS,
    pitchToleranceIn: units.pitchTolerance / UNITS,
    majorMaxIn: major / UNITS,
    majorMinIn: (major - units.majorTolerance) / UNITS,
    pitchMaxIn: pitch / UNITS,
    pitchMinIn: (pitch - units.pitchTolerance) / UNITS,
    minorMaxUnrIn: below(ROUNDED_ROOT) / UNITS,
    minorMaxUnIn: below(FLAT_ROOT) / UNITS,
  };
}
