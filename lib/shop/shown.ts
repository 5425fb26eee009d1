import type { z } from 'zod';
import { countField, form, keyField, measureField } from './field';

/**
 * A prediction as it was shown to someone who then acted on it: kept with the entry of that act, and judged when what
 * it was about is known.
 */
export const ShownSchema = form({
  connectionId: keyField('The connection'),
  materialId: keyField('The material'),
  ends: countField('Ends asked for', { min: 1, max: 100_000 }),
  probability: measureField('The probability', { min: 0, max: 1 }),
  /** The 80 % band of ends left. */
  lowEnds: measureField('The band', { min: 0, max: 1e9 }),
  highEnds: measureField('The band', { min: 0, max: 1e9 }),
});
export type Shown = z.infer<typeof ShownSchema>;
