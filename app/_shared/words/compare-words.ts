import type { EarlyDeaths, GroupedBy, GroupFlag } from '@/lib/compare/comparison';
import { EARLY_DEATH_RULE } from '@/lib/compare/early-deaths';
import { FLAG_MINIMUM, FLAG_PROBABILITY } from '@/lib/compare/flag-group';
import { chanceWords, count, factorText, share } from '../format';

const GROUP_WORD: Record<GroupedBy, string> = {
  lot: 'lot ',
  heat: 'heat ',
  supplier: '',
  'fluid-lot': 'fluid of lot ',
  'fluid-product': 'fluid ',
};

/** "lot 9F-13", "heat C4414", "Maker A", "fluid of lot L04". */
export function groupName({ groupedBy, effect }: Pick<GroupFlag, 'groupedBy' | 'effect'>): string {
  return `${GROUP_WORD[groupedBy]}${effect.groupId}`;
}

/** How long its edges last against the rest: "0.84 of the rest (0.72 to 0.99)". */
export function againstRest({ effect }: Pick<GroupFlag, 'effect'>): string {
  const { low, median, high } = effect.lifeFactor;
  return `${factorText(median)} of the rest (${factorText(low)} to ${factorText(high)})`;
}

/** The chance that it lasts less than the rest, in shop words. */
export function lowerWords({ effect }: Pick<GroupFlag, 'effect'>): string {
  return chanceWords(effect.probabilityLower);
}

/** The log-rank test: the chance of a difference as large if all lasted alike. Not for edges that belong to a group in part. */
export function logRankWords({ logRank }: Pick<GroupFlag, 'logRank'>): string {
  if (logRank === undefined) return 'not asked: edges cut several heats';
  return logRank.p < 0.001 ? 'p under 0.001' : `p ${logRank.p.toFixed(logRank.p < 0.1 ? 3 : 2)}`;
}

/** From what on a group is flagged, so that nobody takes silence or a flag for more than it is. */
export function flagRule(judged: number): string {
  const { edges, worn, ends } = FLAG_MINIMUM;
  return `A group is flagged from ${edges} edges, ${worn} of them worn out, and ${ends} ends on, when the chance that it lasts less is at least ${share(FLAG_PROBABILITY, 1)}. Of ${count(judged, 'group')} looked at, one or two may stand out by chance alone.`;
}

/** Why a lot is proposed to be held. */
export function holdWords({ looked, early, proposeHold }: EarlyDeaths): string {
  if (!proposeHold) return '';
  const { among, deaths } = EARLY_DEATH_RULE;
  if (early >= deaths)
    return `${early} of the first ${looked} died early, chipped or faulty. The rule is ${deaths} of the first ${among}.`;
  return 'A tool of it was found faulty from the maker.';
}
