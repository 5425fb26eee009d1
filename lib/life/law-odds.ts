/** What is known of one law of lives: its evidence, and of the second law the belief in it before the log spoke. */
interface LawEvidence {
  readonly logEvidence: number;
}

/** Beyond these log odds a law holds less than one draw in 160,000: far below what any count over draws can show. */
const RULED_OUT = -12;

/**
 * Log odds of the second law against the first: belief × evidence. The evidences may be up to one and the same constant.
 * Domain: 0 < chance < 1. Source: formula (Bayes' rule).
 * @example logOddsOf({ logEvidence: -3, chance: 0.5 }, { logEvidence: -5 }) // => 2
 */
export function logOddsOf(second: LawEvidence & { readonly chance: number }, first: LawEvidence): number {
  return Math.log(second.chance / (1 - second.chance)) + second.logEvidence - first.logEvidence;
}

/**
 * Whether a law with these log odds in its favour need not be looked at any further.
 * @example lawIsRuledOut(-13) // => true
 */
export function lawIsRuledOut(logOdds: number): boolean {
  return logOdds < RULED_OUT;
}
