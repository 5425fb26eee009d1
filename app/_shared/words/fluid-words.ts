import { dayText, inDays, monthsText, volumeText } from '@/app/_shared/format';
import type { UseBy } from '@/lib/fluid/use-by';
import type { FluidNeed } from '@/lib/outlook/fluid-needs';
import type { Chlorinated } from '@/lib/shop/fluid-lot';

export const CHLORINATED_WORDS: Record<Chlorinated, string> = {
  yes: 'yes',
  no: 'no',
  unknown: 'not known: ask the supplier',
};

/** Use by when, and which life it is that ends. */
export function lifeWords({ onDay, by }: UseBy, today: string): string {
  if (onDay === null) return 'no day on record';
  const why = by === 'opened life' ? ', opened life' : by === 'extension' ? ', extended' : '';
  return onDay < today ? `was ${dayText(onDay, today)}${why}` : `${inDays(onDay, today)}${why}`;
}

/** What is to come of one product, in one sentence: by level or by date, and when. */
export function needSentence(need: FluidNeed, today: string): string {
  const { shortOnDay, endsBy, wasted, firstUseByDay } = need;
  if (shortOnDay.early !== null && shortOnDay.early <= today) return 'There is none that may be used.';
  if (shortOnDay.median !== null)
    return `Likely runs short ${inDays(shortOnDay.median, today)}${
      shortOnDay.early !== null && shortOnDay.early < shortOnDay.median
        ? `, perhaps already ${inDays(shortOnDay.early, today)}`
        : ''
    }.`;
  if (endsBy === 'out-of-date' && wasted[0])
    return `The date comes first: about ${volumeText(wasted[0].leftMl)} of ${wasted[0].toolId} will likely be unused when its day comes, ${inDays(wasted[0].useByDay, today)}.`;
  if (firstUseByDay === null || firstUseByDay === '9999') return 'Lasts a year and more at this pace.';
  return `Lasts a year and more at this pace; the first bottle’s day is ${inDays(firstUseByDay, today)}.`;
}

/** What to buy, and in what size, no more than is used within its life. */
export function purchaseSentence(need: FluidNeed, today: string): string | null {
  const { orderByDay, containers, containerMl, smallerContainerMl, containerMonths, lifeDays } = need;
  const order =
    orderByDay === null
      ? ''
      : `Order ${containers} × ${containerMl === null ? 'one container' : volumeText(containerMl)} ${
          orderByDay < today ? 'now' : `by ${dayText(orderByDay, today)}`
        }.`;
  const small =
    smallerContainerMl === null || containerMl === null || containerMonths === null || lifeDays === null
      ? ''
      : ` ${volumeText(containerMl)} lasts about ${monthsText(containerMonths * 30)} here and keeps ${monthsText(lifeDays)}: buy ${volumeText(smallerContainerMl)} instead.`;
  const text = `${order}${small}`.trim();
  return text === '' ? null : text;
}
