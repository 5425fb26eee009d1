import type { z } from 'zod';
import { countField, dayField, form, keyField, measureField, nameField, textField } from './field';

/** What the screen said of an order when it was placed: kept to be judged when what followed is known. */
export const OrderShownSchema = form({
  /** Chance that the shop would have run out without it, over the days the plan looks at. */
  stockOutProbability: measureField('The probability', { min: 0, max: 1 }),
  /** Last day on which it still comes in time, as surely as the shop asks. */
  orderByOnDay: dayField('The order-by day').nullable(),
});
export type OrderShown = z.infer<typeof OrderShownSchema>;

const unitPrice = countField('The price', { max: 100_000_000 }).nullable();

/** An order with a supplier: the whole content of `order-placed`. */
export const OrderSchema = form({
  id: keyField('The order number'),
  partId: keyField('The part'),
  quantity: countField('The quantity', { min: 1, max: 10_000 }),
  placedOnDay: dayField('The order day'),
  expectedOnDay: dayField('The expected day'),
  /** Absent in orders written down before an order named its supplier: then the part's. */
  supplier: textField('The supplier', 80).optional(),
  /** What one piece costs in this order, minor units. */
  unitPriceMinor: unitPrice.optional(),
  shown: OrderShownSchema.optional(),
});
export type Order = z.infer<typeof OrderSchema>;

/** An order that somebody proposes: the whole content of `order-drafted`. */
export const OrderDraftSchema = form({
  id: keyField('The draft’s number'),
  partId: keyField('The part'),
  quantity: countField('The quantity', { min: 1, max: 10_000 }),
  draftedOnDay: dayField('The day'),
  supplier: textField('The supplier', 80),
  unitPriceMinor: unitPrice,
  leadTimeDays: countField('The lead time', { max: 1000 }).nullable(),
  /** What it is for, in words: the lines that need it. */
  why: textField('What it is for', 300),
  shown: OrderShownSchema.optional(),
});
export type OrderDraft = z.infer<typeof OrderDraftSchema>;

/** A part and how many of it: all that somebody chooses when drafting. The rest of a draft is worked out. */
export const OrderAskedSchema = OrderDraftSchema.pick({ partId: true, quantity: true });

/** A lead's yes to a draft, with the quantity that the lead settled on: `order-approved`. */
export const OrderApprovalSchema = form({ quantity: countField('The quantity', { min: 1, max: 10_000 }) });
/** An order comes on another day than expected: `order-slipped`. `onDay`: when the supplier said so. */
export const OrderSlipSchema = form({
  expectedOnDay: dayField('The new day'),
  onDay: dayField('The day of the news').optional(),
});
/** The supplier was asked: `order-chased`. With the day that was confirmed, or none where nobody answered. */
export const OrderChaseSchema = form({
  onDay: dayField('The day of the call'),
  confirmedForDay: dayField('The confirmed day').nullable(),
});
/** Pieces that came: `order-received`. */
export const OrderReceiptSchema = form({
  quantity: countField('The quantity', { min: 1, max: 10_000 }),
  onDay: dayField('The day it came').optional(),
});
/** It will not come, or not the rest of it: `order-cancelled`. */
export const OrderCancelSchema = form({ onDay: dayField('The day') });

/** An order number as it may be typed into a form. */
export const orderNumberField = nameField('The order number', 64);
