import type { z } from 'zod';
import { form, measureField, nameField } from './field';

/**
 * What an end must show to be accepted, as a job or the shop has written it down. How far NOT GO may run on is a choice
 * of whoever accepts the work: the inch standard's text allows up to three turns, practice after ISO two, and short
 * threads may need less. Null: nothing written here, so the next one in line is asked (job, size table, shop).
 */
export const AcceptanceRuleSchema = form({
  /** NOT GO may run on this many turns and no further. */
  notGoTurnsMax: measureField('NOT GO turns', { min: 0, max: 10 }).nullable(),
  /** Whose rule it is: the drawing, the customer’s specification, the shop’s own. */
  whose: nameField('Whose rule it is', 120),
  /** Threads to be seen between collar and cone. One to two: common practice, no source. */
  exposedThreadsMin: measureField('Exposed threads', { min: 0, max: 20 }).default(1),
  exposedThreadsMax: measureField('Exposed threads', { min: 0, max: 20 }).default(2),
}).refine((rule) => rule.exposedThreadsMax >= rule.exposedThreadsMin, {
  message: 'The most exposed threads are fewer than the least.',
  path: ['exposedThreadsMax'],
});
export type AcceptanceRule = z.infer<typeof AcceptanceRuleSchema>;
