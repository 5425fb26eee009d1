import type { Day } from '../calendar';
import type { Role } from '../shop/vocabulary';

/** What falls due. In the order in which a day lists them. */
export const DUE_KINDS = [
  'job-due',
  'order-by',
  'calibration',
  'fluid-expiry',
  'replacement',
  'order-arrival',
  'job-start',
] as const;
export type DueKind = (typeof DUE_KINDS)[number];

/** Something of the shop that falls due on a day. */
export type DueDate = {
  /** The same for the same thing, however its day moves: kind and subject. */
  readonly id: string;
  readonly onDay: Day;
  /** The 10–90 % band of an estimated day; absent where the day is written down. */
  readonly band?: { readonly lowDay: Day; readonly highDay: Day | null } | undefined;
} & (
  | {
      readonly kind: 'job-start' | 'job-due';
      readonly jobId: string;
      readonly lineId: string;
      readonly connectionId: string;
      readonly ends: number;
    }
  | {
      readonly kind: 'calibration' | 'fluid-expiry';
      readonly toolId: string;
      readonly role: Role;
      readonly partName: string;
    }
  | {
      readonly kind: 'replacement';
      readonly toolId: string;
      readonly role: Role;
      readonly partName: string;
      /** False: it is run until it wears out, and this is when that is expected. */
      readonly planned: boolean;
    }
  | {
      readonly kind: 'order-arrival';
      readonly orderId: string;
      readonly partName: string;
      readonly quantity: number;
    }
  | {
      readonly kind: 'order-by';
      readonly partId: string;
      readonly partName: string;
      readonly quantity: number;
    }
);

/** A part to be ordered, and the last day on which an order still comes in time. */
export interface OrderByDate {
  readonly partId: string;
  readonly quantity: number;
  readonly orderByDay: Day;
}

/** By day, then in the order of the kinds, then by name. */
export function compareDueDates(a: DueDate, b: DueDate): number {
  if (a.onDay !== b.onDay) return a.onDay < b.onDay ? -1 : 1;
  const kinds = DUE_KINDS.indexOf(a.kind) - DUE_KINDS.indexOf(b.kind);
  return kinds !== 0 ? kinds : a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
