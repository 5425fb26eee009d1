import { type Fixed, fixedOf, roundHalfUp, timesFixed } from '../numeric/fixed-decimal';
import {
  FLAT_ROOT,
  TABLE_PLACES as PLACES,
  type ThreadBasis,
  type ThreadToLimit,
  threadBasis,
  TABLE_UNITS as UNITS,
} from './basis';
import { pitchTolerance2A, pitchTwoThirds } from './tolerance';

/** Classes of an internal thread: the collar that runs on the tube's thread. */
export const INTERNAL_CLASSES = ['1B', '2B', '3B'] as const;
export type InternalClass = (typeof INTERNAL_CLASSES)[number];

/** Limits of size of an internal thread, inches. */
export interface InternalLimits {
  readonly majorMinIn: number;
  readonly pitchMinIn: number;
  readonly pitchMaxIn: number;
  readonly minorMinIn: number;
  readonly minorMaxIn: number;
}

/** Multiples of the 2A pitch tolerance. */
const PITCH = { '1B': 1.95, '2B': 1.3, '3B': 0.975 } as const;
/** Sizes from here up have minor limits to three decimals (3B: the lower one only). No. 6. */
const THREE_PLACES_FROM = 1380;
const QUARTER_INCH = 2500;

/**
 * Limits of size of an internal unified thread: D₂ min is the basic pitch diameter, D₂ max adds 1.3·Td₂(2A) for 2B (1B 1.95, 3B
 * 0.975); D₁ min = D − 1.08253175·P; its tolerance 0.25·P − 0.40·P² for 1B and 2B from 1/4 in (0.15·P below 4 threads per inch), else
 * 0.05·∛P² + 0.03·P ÷ D − 0.002 within bounds of P. Domain as `externalThreadLimits`.
 * Source: published, from memory. ASME B1.1, formulas.
 * @example internalThreadLimits({ sizeIn: { num: 9, den: 16 }, tpi: 18 }, '2B').pitchMaxIn // => 0.5323
 */
export function internalThreadLimits(thread: ThreadToLimit, threadClass: InternalClass): InternalLimits {
  const basis = threadBasis(thread);
  const tolerance = roundHalfUp(timesFixed(fixedOf(PITCH[threadClass]), pitchTolerance2A(basis)), PLACES);
  const minorMin = roundHalfUp(basis.basicMajor - timesFixed(FLAT_ROOT, basis.pitch), PLACES);
  const minorMax = minorMin + roundHalfUp(minorTolerance(basis, threadClass), PLACES);
  const coarse = basis.basicMajorUnits >= THREE_PLACES_FROM;
  return {
    majorMinIn: basis.basicMajorUnits / UNITS,
    pitchMinIn: basis.basicPitchUnits / UNITS,
    pitchMaxIn: (basis.basicPitchUnits + tolerance) / UNITS,
    minorMinIn: (coarse ? toThousandths(minorMin) : minorMin) / UNITS,
    minorMaxIn: (coarse && threadClass !== '3B' ? toThousandths(minorMax) : minorMax) / UNITS,
  };
}

function minorTolerance(basis: ThreadBasis, threadClass: InternalClass): Fixed {
  const { pitch } = basis;
  const squared = timesFixed(pitch, pitch);
  const tpi = Number(fixedOf(1)) / Number(pitch);
  const usual = timesFixed(fixedOf(0.25), pitch) - timesFixed(fixedOf(0.4), squared);
  if (threadClass !== '3B' && basis.basicMajorUnits >= QUARTER_INCH)
    return tpi < 4 ? timesFixed(fixedOf(0.15), pitch) : usual;
  const byFormula =
    timesFixed(fixedOf(0.05), pitchTwoThirds(basis.tpi)) +
    (timesFixed(fixedOf(0.03), pitch) * fixedOf(1)) / basis.basicMajor -
    fixedOf(0.002);
  const close =
    tpi >= 12.5
      ? timesFixed(fixedOf(0.23), pitch) - timesFixed(fixedOf(1.5), squared)
      : timesFixed(fixedOf(0.12), pitch);
  const least = threadClass === '3B' ? close : usual;
  const most = timesFixed(fixedOf(0.394), pitch);
  if (byFormula < least) return least;
  if (byFormula > most) return most;
  return byFormula;
}

function toThousandths(units: number): number {
  return Math.floor((units + 5) / 10) * 10;
}
