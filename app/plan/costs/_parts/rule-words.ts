import { chanceWords, count, estimatedMoney } from '@/app/_shared/format';
import { roughMoney } from '@/app/plan/orders/_parts/proposal-words';
import type { RuleCost, wholeSaving } from '@/lib/end-costs/rule-costs';
import type { RuleCount, UsualChange } from '@/lib/end-costs/rule-counts';
import { breakEvenChance } from '@/lib/replacement/carry-on';

/** What the estimate saved over the whole log, or that the count was cheaper, or that so few edges cannot tell. */
export function savedSentence(
  { savedMinor, errorMinor, cheaper }: ReturnType<typeof wholeSaving>,
  currency: string,
): string {
  const amount = roughMoney(Math.abs(savedMinor), currency);
  const error = roughMoney(errorMinor, currency).replace('about ', '');
  if (cheaper === 'predicted')
    return `Over the whole log the estimate would have saved ${amount} against the fixed count, give or take ${error}.`;
  if (cheaper === 'fixed')
    return `Over the whole log the fixed count was cheaper: the estimate would have cost ${amount} more, give or take ${error}.`;
  const side = savedMinor >= 0 ? 'less' : 'more';
  return `Nothing to choose between them yet: over the whole log the estimate would have cost ${amount} ${side}, give or take ${error}.`;
}

/** Which rule was cheaper for one part. */
export function cheaperWords({ cheaper, savedMinor }: Pick<RuleCost, 'cheaper' | 'savedMinor'>): string {
  if (savedMinor === null) return 'nothing changed yet';
  if (cheaper === 'predicted') return 'the estimate';
  if (cheaper === 'fixed') return 'the count';
  return savedMinor === 0 ? 'the same' : 'too close to tell';
}

export function ruleWords({ planned, midJob }: Pick<RuleCount, 'planned' | 'midJob'>): string {
  return `${planned} planned, ${midJob} in mid-job`;
}

/** When the estimate changes an edge first, with the two amounts that it weighs. */
export function breakEvenWords({ workMinor, extraMinor }: UsualChange): string {
  const chance = breakEvenChance({ workCost: workMinor, extraCost: extraMinor });
  return chance === 0 ? 'never: it is run to wear-out' : `${chanceWords(chance)}`;
}

export function workWords({ workEnds, workMinor }: UsualChange, currency: string): string {
  return `${count(workEnds, 'end')}, ${estimatedMoney(workMinor, currency)} of an edge`;
}
