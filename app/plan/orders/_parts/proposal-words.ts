import {
  chanceWords,
  count,
  dayText,
  dueText,
  estimatedMoney,
  listWords,
  percent,
} from '@/app/_shared/format';
import type { OrderLine } from '@/lib/orders/order-lines';
import type { OrderProposal } from '@/lib/orders/order-proposals';

/** By when it is to be ordered: a day, or that the day has passed. */
export function byWhenWords({ orderByOnDay }: Pick<OrderLine, 'orderByOnDay'>, today: string): string {
  if (orderByOnDay === null) return 'no lead time on record';
  return orderByOnDay <= today ? 'today' : dayText(orderByOnDay, today);
}

/** What stands under the day: how surely it comes in time, or since when it is late to order. */
export function inTimeWords(line: OrderLine, today: string): string {
  if (line.orderByOnDay === null) return 'write the lead time down with the part';
  if (line.because.kind !== 'edge')
    return line.orderByOnDay <= today ? 'the day has passed' : dueText(line.orderByOnDay, today);
  const { inTimeToday } = line.because.proposal.chosen;
  if (line.orderByOnDay > today) return `ordered then, it comes in time as surely as the shop asks`;
  return inTimeToday === null ? '' : `ordered today, in time: ${chanceWords(inTimeToday)}`;
}

/** Why: how many are needed, in how many of the futures. */
export function whyWords(line: OrderLine, today: string): string {
  const { because } = line;
  if (because.kind === 'missing') return 'The shop has none, and lines are stopped for it.';
  if (because.kind === 'fluid') {
    const { early } = because.need.shortOnDay;
    return early === null ? 'Runs low.' : `May run short from ${dayText(early, today)}.`;
  }
  const { plannedBand, totalBand, outlook } = because.proposal;
  const weeks = count(Math.round(outlook.horizonDays / 7), 'week');
  const coming = outlook.onOrder + outlook.drafted;
  const beyond =
    coming === 0 ? 'beyond what is here' : `beyond what is here and the ${coming} on order or drafted`;
  const unplanned =
    totalBand.high > plannedBand.high
      ? ', work that is not on the books yet counted in at the pace of the log'
      : '';
  const withIt = because.proposal.byPieces[line.quantity]?.stockOut ?? 0;
  const enough = `With ${line.quantity} more it lasts: ${chanceWords(1 - withIt)}.`;
  const reground = regrindWords(because.proposal, today);
  return `${range(totalBand.low, totalBand.high)} needed in ${weeks}, ${beyond}${unplanned}. ${enough}${reground}${waitWords(because.proposal)}`;
}

/** What regrinds save of an order, and which blades can go out today. */
export function regrindWords({ regrinds }: Pick<OrderProposal, 'regrinds'>, today: string): string {
  if (regrinds === null) return '';
  const { pieces, wornIds, backOnDay, awayDays } = regrinds;
  const saved = ` ${count(pieces, 'new one')} fewer than without regrinds`;
  if (wornIds.length > 0)
    return `${saved}: ${listWords(wornIds)} can be reground by ${dayText(backOnDay, today)} instead, and others go out as they wear out.`;
  return `${saved}: worn ones go out as they wear out, and are back in ${count(awayDays, 'day')}.`;
}

/** Where it runs short for a time and buying does not help: what is on order comes sooner than anything bought today. */
export function waitWords({ waits }: Pick<OrderProposal, 'waits'>): string {
  if (waits < 0.02) return '';
  return ` In ${percent(waits)} of the futures work waits for what is on order: nothing bought today comes sooner, so ask the supplier.`;
}

function range(low: number, high: number): string {
  return low === high ? String(low) : `${low} to ${high}`;
}

/** What happens if it is not ordered. */
export function ifNotWords(line: OrderLine, today: string, currency: string): string {
  const { because } = line;
  if (because.kind !== 'edge')
    return because.kind === 'missing' ? 'The lines stay stopped.' : 'Work stops for want of fluid.';
  const { runsOut, ifNot, weekCostMinor } = because.proposal;
  const when = runsOut.onDay === null ? '' : `, about ${dayText(runsOut.onDay, today)}`;
  const stop = `Runs out: ${percent(runsOut.probability)}${when}.`;
  const days = ifNot.stoppedDays === null ? 0 : Math.round(ifNot.stoppedDays);
  const cost =
    ifNot.costMinor === null || days === 0
      ? ''
      : ` Ordered only then, ${count(days, 'day')} of standing still on average, ${roughMoney(ifNot.costMinor, currency)}.`;
  const week =
    weekCostMinor === null || weekCostMinor < 1_000
      ? ''
      : ` A week of waiting adds ${roughMoney(weekCostMinor, currency)}.`;
  return `${stop}${cost}${week}`;
}

/** An expected cost without false precision: two figures. */
export function roughMoney(minor: number, currency: string): string {
  return `about ${estimatedMoney(minor, currency, 2)}`;
}
