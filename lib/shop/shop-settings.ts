import { z } from 'zod';
import { AcceptanceRuleSchema } from './acceptance-rule';
import { form, measureField, nameField } from './field';

/** How the shop wants to work: its name, units, money and how sure it wants to be. The whole content of `shop-set`. */
export const ShopSchema = form({
  name: nameField('The shop’s name'),
  units: z.enum(['in', 'mm'], { error: 'The units must be in or mm.' }).default('in'),
  currency: z
    .string({ error: 'The currency is needed.' })
    .regex(/^[A-Z]{3}$/, 'The currency is three letters, as in ISO 4217.')
    .default('USD'),
  /** Required probability for a line that can be remade, and for one that cannot. */
  requiredProbability: measureField('The required probability', { min: 0.5, max: 0.999 }).default(0.9),
  requiredProbabilityPrecious: measureField('The required probability', { min: 0.5, max: 0.999 }).default(
    0.95,
  ),
  /** Measured use of fluid over planned use: what runs off and is wiped away. Common practice 2 to 5, no source. */
  fluidWasteFactor: measureField('The fluid waste factor', { min: 1, max: 20 }).default(3),
  /** What every end must show, where neither its job nor its size says more. Absent: nothing written down. */
  acceptanceRule: AcceptanceRuleSchema.optional(),
});
export type Shop = z.infer<typeof ShopSchema>;
