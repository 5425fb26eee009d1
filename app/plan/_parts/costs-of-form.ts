import { number } from '@/app/_server/form-fields';
import type { Costs } from '@/lib/shop/costs';

/** What the form of costs says: money as typed in major units, holding in per cent. The door judges it. */
export function costsOfForm(form: FormData): Record<keyof Costs, number | undefined> {
  const money = (name: keyof Costs) => hundredfold(number(form, name));
  const holding = number(form, 'holdingPerYear');
  return {
    orderMinor: money('orderMinor'),
    holdingPerYear: holding === undefined ? undefined : holding / 100,
    plannedChangeMinor: money('plannedChangeMinor'),
    midJobChangeMinor: money('midJobChangeMinor'),
    spoiltEndMinor: money('spoiltEndMinor'),
    spoiltPreciousMinor: money('spoiltPreciousMinor'),
    regrindMinor: money('regrindMinor'),
    regrindDays: number(form, 'regrindDays'),
    stoppedDayMinor: money('stoppedDayMinor'),
    calibrationMinor: money('calibrationMinor'),
  };
}

function hundredfold(major: number | undefined): number | undefined {
  return major === undefined ? undefined : Math.round(major * 100);
}
