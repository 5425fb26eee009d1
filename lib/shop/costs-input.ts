import { z } from 'zod';
import { CostsSchema } from './costs';
import { stamped } from './entry-fields';

/** What the form of the shop's costs sends. */
export const SetCostsInput = z.object({
  ...stamped,
  costs: CostsSchema,
});
export type SetCosts = z.output<typeof SetCostsInput>;
