import type { z } from 'zod';
import { dayField, entryIdField, form, keyField, listField, momentField, textField } from './field';
import { OrderApprovalSchema, OrderChaseSchema, OrderDraftSchema } from './order';

/** What the commands about orders take beside placing and slipping, parsed once at the door. */
const entered = {
  entryId: entryIdField,
  deviceAtMs: momentField('The device’s clock'),
  reason: textField('The note', 300).default(''),
};

export const DraftOrdersInput = form({ ...entered, drafts: listField('The drafts', OrderDraftSchema, 50) });
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
});
export type ChaseOrder = z.output<typeof ChaseOrderInput>;

export const CancelOrderInput = form({
  ...entered,
  orderId: keyField('The order'),
  onDay: dayField('The day'),
});
export type CancelOrder = z.output<typeof CancelOrderInput>;
