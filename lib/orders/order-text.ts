import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { spellOut } from './spell-out';

/** What an order says to its supplier. */
export interface OrderForText {
  readonly id: string;
  readonly quantity: number;
  readonly supplier: string;
  readonly neededOnDay: string | null;
}

/**
 * An order as text to be copied into a mail: number, quantity, the designation spelled out with the hand in words, and what
 * it must not be taken for. Plain slashes: mail programs mangle true fractions.
 */
export function orderText(
  order: OrderForText,
  { shopName, part, connections }: { shopName: string; part: Part; connections: readonly Connection[] },
): string {
  const spelled = spellOut(part, connections);
  return [
    `Order ${order.id}${order.supplier === '' ? '' : ` to ${order.supplier}`}`,
    '',
    `${order.quantity} × ${spelled.text}`,
    ...spelled.warnings.map((warning) => `   ${warning}`),
    ...(order.neededOnDay === null ? [] : ['', `Needed by ${order.neededOnDay}. Please confirm the day.`]),
    '',
    'Please send the certificate with the parts, and mark the lot on the box.',
    '',
    shopName,
  ].join('\n');
}

/** The columns of a file of orders. */
export const ORDER_COLUMNS = [
  'order',
  'status',
  'supplier',
  'part',
  'designation',
  'hand',
  'quantity',
  'received',
  'unit_price',
  'placed_on',
  'promised_on',
  'expected_on',
  'for',
] as const;

/** An order with what its cells need. */
export interface OrderForCells {
  readonly id: string;
  readonly status: string;
  readonly supplier: string;
  readonly quantity: number;
  readonly receivedQuantity: number;
  readonly unitPriceMinor: number | null;
  readonly placedOnDay: string;
  readonly promisedOnDay: string;
  readonly expectedOnDay: string;
  readonly why: string;
}

/** One order as the cells of a file; a draft has no promised day yet. */
export function orderCells(
  order: OrderForCells,
  part: Part | undefined,
  connections: readonly Connection[],
): string[] {
  const spelled = part === undefined ? undefined : spellOut(part, connections);
  const isDraft = order.status === 'drafted' || order.status === 'approved';
  return [
    order.id,
    order.status,
    order.supplier === '' ? (part?.supplier ?? '') : order.supplier,
    part?.id ?? '',
    spelled?.designation ?? '',
    spelled?.handWords ?? '',
    String(order.quantity),
    String(order.receivedQuantity),
    order.unitPriceMinor === null ? '' : (order.unitPriceMinor / 100).toFixed(2),
    order.placedOnDay,
    isDraft ? '' : order.promisedOnDay,
    isDraft ? '' : order.expectedOnDay,
    order.why,
  ];
}
