import type { Band } from '../ensemble/reasons';

/** What edges may be grouped by to ask whether one group dies early. */
export type GroupedBy = 'lot' | 'supplier' | 'heat' | 'fluid-lot' | 'fluid-product';

/** One group in a log-rank test. */
export interface LogRankGroup {
  readonly groupId: string;
  readonly edges: number;
  readonly worn: number;
  /** Wear-outs to be expected in it if all groups lasted alike. */
  readonly expected: number;
}

/** Log-rank test: do the groups last alike? `p` is the chance of a difference as large if they do. */
export interface LogRank {
  readonly chi2: number;
  readonly degreesOfFreedom: number;
  readonly p: number;
  readonly groups: readonly LogRankGroup[];
}

/** How long a group's edges last against the rest, as the log and a cautious belief (no effect, give or take) have it. */
export interface GroupEffect {
  readonly groupId: string;
  readonly edges: number;
  readonly worn: number;
  /** Ends that the group's edges have cut. */
  readonly ends: number;
  /** Median life ÷ that of the rest. */
  readonly lifeFactor: Band;
  /** Probability that the group's median life is lower than that of the rest. */
  readonly probabilityLower: number;
}

/** Why a group is flagged, or why it is not. */
export type FlagVerdict = 'flagged' | 'no-difference' | 'too-few-edges' | 'too-few-ends' | 'too-few-worn';

/** The judgement on one group, always with its evidence. */
export interface GroupFlag {
  readonly groupedBy: GroupedBy;
  readonly verdict: FlagVerdict;
  readonly effect: GroupEffect;
  /** The group against all the rest. */
  readonly logRank: LogRank | undefined;
}

/** Early deaths in a lot: the first of its tools, and whether the rule proposes to hold the lot. */
export interface EarlyDeaths {
  readonly lot: string;
  /** Tools of the lot looked at: the first that were used. */
  readonly looked: number;
  readonly early: number;
  readonly toolIds: readonly string[];
  readonly proposeHold: boolean;
}
