import { z } from 'zod';
import { CostsSchema } from './costs';
import { entryIdField, momentField } from './field';

/** What the form of the shop's costs sends. */
export const SetCostsInput = z.object({
  entryId: entryIdField,
  deviceAtMs: momentField('The device’s clock'),
  costs: CostsSchema,
});
export type SetCosts = z.output<typeof SetCostsInput>;
