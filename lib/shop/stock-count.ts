import { z } from 'zod';
import { countField, form, keyField, listField, nameField, textField } from './field';
import { EDGE_KINDS } from './vocabulary';

/** What a stock-take goes through. Common practice, no source. */
export const COUNT_SCOPES = ['edges', 'gauges', 'fluids', 'everything'] as const;
export type CountScope = (typeof COUNT_SCOPES)[number];
export const COUNT_SCOPE_LABEL: Record<CountScope, string> = {
  edges: 'blades and dies',
  gauges: 'gauges',
  fluids: 'fluids',
  everything: 'everything in the crib',
};

/** Most that one stock-take goes through. */
export const SCANNED_MAX = 5000;

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

/** Of blades and dies, one drawer: those of one size and service, or of one kind, or both. Absent: all of them. */
const drawerFields = {
  connectionId: keyField('The size').optional(),
  edgeKind: z.enum(EDGE_KINDS, { error: 'Say whether blades or dies were counted.' }).optional(),
};
const DrawerSchema = form(drawerFields);
export type Drawer = z.infer<typeof DrawerSchema>;

/** A stock-take by scanning: the whole content of `stock-counted`. */
export const StockCountSchema = form({
  scope: z.enum(COUNT_SCOPES, { error: 'Say what was counted.' }),
  expected: countField('Expected', { max: 100_000 }),
  found: countField('Found', { max: 100_000 }),
  variances: listField('The differences', VarianceSchema, 500),
  /** Every tool that was scanned, once. Absent in counts entered before it was kept. */
  scanned: listField('What was scanned', toolIdField, SCANNED_MAX).optional(),
  ...drawerFields,
});
export type StockCount = z.infer<typeof StockCountSchema>;
