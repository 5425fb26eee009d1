import type { z } from 'zod';
import { countField, form, measureField } from './field';

/** An amount of the shop's money in minor units. */
const money = (name: string) => countField(name, { max: 1_000_000_000 });

/**
 * What things cost the shop beside the prices of its parts: the whole content of `costs-set`. Money in minor units.
 */
export const CostsSchema = form({
  /** Placing one order: paper, post, the receiving check. */
  orderMinor: money('The cost of an order'),
  /** Keeping stock for a year, as a share of its price. */
  holdingPerYear: measureField('The cost of holding stock', { min: 0, max: 2 }),
  /** Changing an edge between jobs, when nobody waits for it. */
  plannedChangeMinor: money('A planned change'),
  /** Changing it in the middle of a job: the time lost, beside the spoilt end. */
  midJobChangeMinor: money('A change in mid-job'),
  /** One end spoilt where it can be remade. */
  spoiltEndMinor: money('A spoilt end'),
  /** One end spoilt on a spool that cannot be remade. */
  spoiltPreciousMinor: money('A spoilt end that cannot be remade'),
  /** One blade sent out and reground. */
  regrindMinor: money('A regrind'),
  regrindDays: countField('Days for a regrind', { max: 365 }),
  /** A bench standing still for a day for want of a tool. */
  stoppedDayMinor: money('A day’s stop'),
  /** One gauge or master sent to a laboratory and calibrated; absent or 0: not counted. */
  calibrationMinor: money('A calibration').optional(),
});
export type Costs = z.infer<typeof CostsSchema>;

/** What a shop that has said nothing is taken to pay: first guesses to be overwritten. Common practice, no source. */
export const DEFAULT_COSTS: Costs = {
  orderMinor: 2_500,
  holdingPerYear: 0.2,
  plannedChangeMinor: 600,
  midJobChangeMinor: 3_000,
  spoiltEndMinor: 3_000,
  spoiltPreciousMinor: 90_000,
  regrindMinor: 2_000,
  regrindDays: 14,
  stoppedDayMinor: 40_000,
};
