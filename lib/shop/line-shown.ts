import { z } from 'zod';
import { countField, form, measureField } from './field';
import { EDGE_KINDS } from './vocabulary';

/**
 * What the plan said of one line when its job was planned or changed: kept with that entry, and judged once the line is cut.
 * About lives only, as the verdict's `pMade` is.
 */
export const LineShownSchema = form({
  lineNo: countField('The line number', { min: 1, max: 999 }),
  verdict: z.enum(['can-make', 'at-risk', 'cannot-make-now'], { error: 'The verdict is not one we know.' }),
  /** Share of futures in which the edges that were there, or on order, last for every end of the line. */
  pMade: measureField('The probability', { min: 0, max: 1 }),
  /** Ends still to make when it was said. */
  ends: countField('Ends', { min: 1, max: 100_000 }),
  /** By kind of edge that falls short of what is asked for: the share in which that kind lasts. */
  edges: z.array(
    form({
      kind: z.enum(EDGE_KINDS, { error: 'The kind must be blade or die.' }),
      pLasts: measureField('The probability', { min: 0, max: 1 }),
    }),
  ),
});
export type LineShown = z.infer<typeof LineShownSchema>;
