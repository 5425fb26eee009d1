import type { Feature, GaugeUnit } from '../../lib/shop/calibration';
import { chanceOf } from '../random';

/** What is measured of a kind of gauge: invented limits and uncertainties of a likely size; no figure is a published one. */
interface Measured {
  readonly feature: string;
  readonly unit: GaugeUnit;
  readonly limit: number;
  readonly U: number;
  /** How far it moves from one calibration to the next, as a share of its limit. */
  readonly moves: number;
  readonly decimals: number;
}

const ring = { feature: 'Pitch diameter', unit: 'um', limit: 6, U: 1.6, decimals: 1 } as const;

const OF_KIND: readonly (readonly [prefix: string, measured: Measured])[] = [
  ['not-go-ring', { ...ring, moves: -0.05 }],
  ['go-ring', { ...ring, moves: 0.11 }],
  ['cone-gauge', { feature: 'Mouth diameter', unit: 'um', limit: 10, U: 2.4, moves: 0.14, decimals: 1 }],
  ['length-gauge', { feature: 'Length', unit: 'mm', limit: 0.05, U: 0.01, moves: -0.06, decimals: 3 }],
  ['setting-plug', { feature: 'Pitch diameter', unit: 'um', limit: 3, U: 0.9, moves: -0.05, decimals: 1 }],
  ['micrometer', { feature: 'Error of indication', unit: 'um', limit: 4, U: 1, moves: 0.06, decimals: 1 }],
  ['thread-wires', { feature: 'Wire diameter', unit: 'um', limit: 0.6, U: 0.2, moves: -0.05, decimals: 2 }],
  ['master-seat', { feature: 'Cone angle', unit: 'deg', limit: 0.05, U: 0.012, moves: 0.05, decimals: 3 }],
  ['torque-wrench', { feature: 'Error at full scale', unit: '%', limit: 4, U: 1, moves: 0.12, decimals: 1 }],
];

/** The busiest ring of the shop wears fastest. */
const BUSY = 'G-38-GO-1';

/** What the laboratory wrote of a gauge at its calibrations, first to last: it drifts, and readings scatter a little. */
export function errorsOf(toolId: string, partId: string, count: number): Feature[] {
  const measured = OF_KIND.find(([prefix]) => partId.startsWith(prefix))?.[1];
  if (measured === undefined) return [];
  const { feature, unit, limit, U, decimals } = measured;
  const moves = measured.moves * (toolId === BUSY ? 1.6 : 1);
  const chance = chanceOf(`errors of ${toolId}`);
  return Array.from({ length: count }, (_, i) => {
    const scatter = chance.normal(0, 0.035);
    const error = Number((limit * (moves * i + scatter)).toFixed(decimals));
    const limits = { lowerLimit: -limit, upperLimit: limit, expandedUncertainty: U, coverageFactor: 2 };
    return { feature, unit, asFoundError: error, asLeftError: error, ...limits };
  });
}

/** The cone gauge that was found out: worn open at the mouth, beyond its limit of 10 µm; and as it came back. */
export const FOUND_OUT: Feature = {
  ...{ feature: 'Mouth diameter', unit: 'um', asFoundError: 14.2, asLeftError: 14.2 },
  ...{ lowerLimit: -10, upperLimit: 10, expandedUncertainty: 2.4, coverageFactor: 2 },
};
export const ADJUSTED: Feature = { ...FOUND_OUT, asFoundError: 14.2, asLeftError: 0.8 };
export const A_YEAR_ON: Feature = { ...FOUND_OUT, asFoundError: 2.1, asLeftError: 2.1 };
