import { count, dayText } from '@/app/_shared/format';
import type { OrderRow } from '@/db/queries/orders';
import { daysBetween } from '@/lib/calendar';

/** What became of the promised day: "as promised", or "promised Mon 7 Dec, slipped 9 days". */
export function slipWords(
  { promisedOnDay, expectedOnDay }: Pick<OrderRow, 'promisedOnDay' | 'expectedOnDay'>,
  today: string,
): string {
  const days = daysBetween(promisedOnDay, expectedOnDay);
  if (days === 0) return 'as promised';
  const moved = days > 0 ? `slipped ${count(days, 'day')}` : `${count(-days, 'day')} sooner`;
  return `promised ${dayText(promisedOnDay, today)}, ${moved}`;
}
