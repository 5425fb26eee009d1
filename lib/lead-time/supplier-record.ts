import { daysBetween } from '../calendar/day';
import { achievedDays, type Delivery, logDelay, quotedDays } from './delivery';
import { LEAD_TIME_PRIOR, type LeadTimeBelief, leadDaysWithin, learnLeadTime } from './lead-time-belief';

/** A supplier as its past orders show it: what it promised, what it achieved, what to expect of the next order. */
export interface SupplierRecord {
  readonly supplier: string;
  readonly orders: number;
  /** Orders in full on the promised day or before. */
  readonly onTime: number;
  readonly quotedDaysMean: number;
  readonly achievedDaysMean: number;
  /** Days after the promised day, negative before it: the median and the worst. */
  readonly lateDaysMedian: number;
  readonly lateDaysWorst: number;
  readonly belief: LeadTimeBelief;
  /** Of an order quoted at 10 days: days at 50 % and at 90 %. */
  readonly per10Days: { readonly median: number; readonly nineInTen: number };
}

/** What is believed of one supplier: the prior, updated by its own orders. An unnamed supplier is one of its own. */
export function supplierBelief(deliveries: readonly Delivery[], supplier: string): LeadTimeBelief {
  return learnLeadTime(
    LEAD_TIME_PRIOR,
    deliveries.filter((delivery) => delivery.supplier === supplier).map(logDelay),
  );
}

/** Promised against achieved, by supplier, the one with most orders first. */
export function supplierRecords(deliveries: readonly Delivery[]): SupplierRecord[] {
  const names = [...new Set(deliveries.map(({ supplier }) => supplier))];
  return names
    .map((supplier) =>
      recordOf(
        supplier,
        deliveries.filter((delivery) => delivery.supplier === supplier),
      ),
    )
    .sort((a, b) => b.orders - a.orders || (a.supplier < b.supplier ? -1 : 1));
}

function recordOf(supplier: string, own: readonly Delivery[]): SupplierRecord {
  const late = own.map(({ promisedOnDay, receivedOnDay }) => daysBetween(promisedOnDay, receivedOnDay));
  const belief = supplierBelief(own, supplier);
  return {
    supplier,
    orders: own.length,
    onTime: late.filter((days) => days <= 0).length,
    quotedDaysMean: mean(own.map(quotedDays)),
    achievedDaysMean: mean(own.map(achievedDays)),
    lateDaysMedian: median(late),
    lateDaysWorst: Math.max(...late),
    belief,
    per10Days: { median: leadDaysWithin(belief, 10, 0.5), nineInTen: leadDaysWithin(belief, 10, 0.9) },
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2;
}
