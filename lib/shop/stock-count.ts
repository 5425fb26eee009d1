import { z } from 'zod';
import { countField, form, listField, nameField, textField } from './field';

/** What a stock-take goes through. Common practice, no source. */
export const COUNT_SCOPES = ['edges', 'gauges', 'fluids', 'everything'] as const;
export type CountScope = (typeof COUNT_SCOPES)[number];
export const COUNT_SCOPE_LABEL: Record<CountScope, string> = {
  edges: 'blades and dies',
  gauges: 'gauges',
  fluids: 'fluids',
  everything: 'everything in the crib',
};

const toolIdField = textField('The tool ID', 40).min(1, 'Scan or type a tool ID.');

/** One difference between the record and the shelf, why, and what becomes of it. Never a silent fix. */
export const VarianceSchema = form({
  toolId: toolIdField,
  kind: z.enum(['missing', 'unexpected'], { error: 'Say whether it is missing or was not expected.' }),
  /** `lost`: out of the record until found. `in-crib`: it lies here, so the record now says so. `left`: still being looked into. */
  outcome: z.enum(['lost', 'in-crib', 'left'], { error: 'Say what becomes of it.' }),
  reason: nameField('The reason', 200),
});
export type Variance = z.infer<typeof VarianceSchema>;

/** A stock-take by scanning: the whole content of `stock-counted`. */
export const StockCountSchema = form({
  scope: z.enum(COUNT_SCOPES, { error: 'Say what was counted.' }),
  expected: countField('Expected', { max: 100_000 }),
  found: countField('Found', { max: 100_000 }),
  variances: listField('The differences', VarianceSchema, 500),
});
export type StockCount = z.infer<typeof StockCountSchema>;
