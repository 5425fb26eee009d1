import type { PartReplacement, ValueReplacement } from '@/lib/replacement/part-replacement';
import type { ToolPlan } from '@/lib/replacement/tool-plan';
import { chanceWords, count, dayText, ends, floorEnds, inDays } from '../format';

const WHY_RUN = {
  'does-not-age': 'an older edge is no likelier to go than a new one',
  'failure-costs-no-more': 'a change in mid-job costs no more',
  'wears-out-first': 'it wears out long before',
  'saves-too-little': 'changing early saves under 1 in 100',
} as const;

/** At what age to change: "about 140", or "run to wear-out". */
export function changeAt({ atEnds }: ValueReplacement): string {
  return atEnds === null ? 'run to wear-out' : ends(atEnds);
}

/** Why no age is named; empty where one is. */
export function whyRun({ runReason }: ValueReplacement): string {
  return runReason === null ? '' : WHY_RUN[runReason];
}

/** What one tool still has before it is changed: "about 34 more", "none: change it now", "run to wear-out". */
export function moreText({ moreEnds }: ToolPlan): string {
  if (moreEnds === null) return 'run to wear-out';
  return floorEnds(moreEnds) === 0 ? 'none: change it now' : `${ends(moreEnds)} more`;
}

/** When that is: "in 12 days, Mon 7 Dec". */
export function whenText({ lowDay, onDay }: ToolPlan, today: string): string {
  if (onDay !== null) return inDays(onDay, today);
  return lowDay === null ? 'none in sight' : `not before ${dayText(lowDay, today)}`;
}

/** How well that day is known: "Tue 1 Dec to Sat 12 Dec"; empty where there is no more to say. */
export function bandText({ lowDay, onDay, highDay }: ToolPlan, today: string): string {
  if (onDay === null || lowDay === null || lowDay === highDay) return '';
  return highDay === null
    ? `from ${dayText(lowDay, today)} on`
    : `${dayText(lowDay, today)} to ${dayText(highDay, today)}`;
}

/** How likely it goes before it is changed; empty where it is run to wear-out. */
export function beforeText({ moreEnds, wearsOutFirst }: ToolPlan): string {
  return moreEnds === null || moreEnds === 0 ? '' : `${chanceWords(wearsOutFirst)} that it wears out before`;
}

/** What to do with a blade that is done: "Regrind up to 2 times, then buy." */
export function regrindSentence({ regrind, part }: PartReplacement): string {
  if (regrind === null) return part.regrindLimit === 0 ? 'is not reground' : 'no cost of a regrind yet';
  if (regrind.bestRegrinds === 0) return 'buy a new one each time';
  const times = count(regrind.bestRegrinds, 'time');
  return `regrind ${regrind.bestRegrinds === part.regrindLimit ? `all ${times}` : times}, then buy`;
}
