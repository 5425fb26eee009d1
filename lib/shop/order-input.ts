import type { z } from 'zod';
import { entered } from './entry-fields';
import { dayField, form, keyField, listField } from './field';
import { OrderApprovalSchema, OrderAskedSchema, OrderChaseSchema, OrderDraftSchema } from './order';

/** What the commands about orders take beside placing and slipping, parsed once at the door. */

export const DraftOrdersInput = form({
  ...entered,
  /** What was ticked, in its order; absent: what is drafted. */
  asked: listField('The parts', OrderAskedSchema, 50).optional(),
  drafts: listField('The drafts', OrderDraftSchema, 50),
});
export type DraftOrders = z.output<typeof DraftOrdersInput>;

export const ApproveOrdersInput = form({
  ...entered,
  orders: listField('The orders', form({ id: keyField('The order'), ...OrderApprovalSchema.shape }), 50),
});
export type ApproveOrders = z.output<typeof ApproveOrdersInput>;

export const ChaseOrderInput = form({
  ...entered,
  orderId: keyField('The order'),
  ...OrderChaseSchema.shape,
  /** When they were asked; absent: when it was entered. */
  onDay: dayField('The day of the call').optional(),
});
export type ChaseOrder = z.output<typeof ChaseOrderInput>;

export const CancelOrderInput = form({
  ...entered,
  orderId: keyField('The order'),
  /** When it was called off; absent: when it was entered. */
  onDay: dayField('The day').optional(),
});
export type CancelOrder = z.output<typeof CancelOrderInput>;
