import { z } from 'zod';
import { form, measureField } from './field';
import { EDGE_KINDS } from './vocabulary';

/** A figure believed before the log speaks: typical, and give or take a factor (10–90 % band: ÷ to ×). */
const believed = (name: string, { min, max }: { min: number; max: number }) =>
  form({
    typical: measureField(name, { min, max }),
    giveOrTake: measureField('Give or take', { min: 1.01, max: 20 }),
  });

/**
 * What is believed of one kind of edge before the shop's own log speaks. Typical life itself is believed part by part
 * (first guesses), wear by material in the material table; here stands the rest.
 */
export const BeliefSchema = form({
  kind: z.enum(EDGE_KINDS, { error: 'The kind must be blade or die.' }),
  /** Weibull shape: 1 breaks by chance at any age, 2 to 4 wears out, higher wears out all at once. */
  shape: believed('The shape', { min: 0.3, max: 20 }),
  /** Life of an edge against the one before its last regrind. */
  regrind: believed('The life after a regrind', { min: 0.05, max: 3 }),
  /** How much faster an edge wears cutting dry. */
  dry: believed('The factor of cutting dry', { min: 0.2, max: 20 }),
  /** How much faster it wears recutting refused ends. */
  rework: believed('The factor of recutting', { min: 0.2, max: 20 }),
  /** How far parts of one size lie apart in typical life. */
  partGiveOrTake: measureField('The spread between parts', { min: 1.01, max: 20 }),
  /** Accidents: on average one in so many lives. */
  livesPerIncident: measureField('Lives to an accident', { min: 1, max: 10_000 }),
  /** How likely it is that a few edges last far longer than the rest; absent: as this project's default says. */
  longTailPercent: measureField('The chance of a long tail', { min: 0, max: 95 }).optional(),
});
export type Belief = z.infer<typeof BeliefSchema>;
