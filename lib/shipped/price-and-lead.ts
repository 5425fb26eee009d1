import type { Role } from '../shop/vocabulary';

/** What an example part costs and how long it takes: middle of the usual range, whole days, minor units of USD. */
export interface PriceAndLead {
  readonly priceMinor: number | null;
  readonly leadTimeDays: number | null;
}

/** Usual range of price, USD, and of lead time, days. */
type Range = readonly [priceLow: number, priceHigh: number, leadLow: number, leadHigh: number];

const SMALL_DIE: Range = [60, 180, 14, 42];
const LARGE_DIE: Range = [120, 400, 28, 70];
const GUIDE: Range = [40, 150, 14, 42];
/** Half the range of a GO and NOT GO pair. */
const RING: Range = [125, 350, 21, 56];
const CONE_GAUGE: Range = [150, 500, 21, 42];

/** Length gauges are taken as dear as cone gauges; roles not listed have no figure, and none is made up. */
const BY_ROLE: Partial<Record<Role, Range>> = {
  blade: [40, 120, 3, 10],
  die: SMALL_DIE,
  'coning-guide': GUIDE,
  'threading-guide': GUIDE,
  collet: GUIDE,
  'coning-body': [600, 1800, 21, 56],
  'die-stock': [400, 1200, 21, 56],
  'cone-gauge': CONE_GAUGE,
  'length-gauge': CONE_GAUGE,
  'go-ring': RING,
  'not-go-ring': RING,
  'setting-plug': [300, 900, 28, 70],
  fluid: [15, 40, 2, 7],
};

/**
 * Example price and lead time of a part. Left-hand dies of 3/4 in and above cost more and take longer. Blades: as from
 * stock. Fluid: one litre. Source: common practice, no source; the shop's own figures replace them.
 * @example priceAndLead('die', 0.5625).leadTimeDays // => 28
 */
export function priceAndLead(role: Role, odIn: number): PriceAndLead {
  const range = role === 'die' && odIn >= 0.75 ? LARGE_DIE : BY_ROLE[role];
  if (range === undefined) return { priceMinor: null, leadTimeDays: null };
  const [priceLow, priceHigh, leadLow, leadHigh] = range;
  return {
    priceMinor: Math.round(((priceLow + priceHigh) / 2) * 100),
    leadTimeDays: Math.round((leadLow + leadHigh) / 2),
  };
}
