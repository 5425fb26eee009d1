import type { z } from 'zod';
import { countField, dayField, form, keyField } from './field';

/** An order with a supplier: the whole content of `order-placed`. */
export const OrderSchema = form({
  id: keyField('The order number'),
  partId: keyField('The part'),
  quantity: countField('The quantity', { min: 1, max: 10_000 }),
  placedOnDay: dayField('The order day'),
  expectedOnDay: dayField('The expected day'),
});
export type Order = z.infer<typeof OrderSchema>;
