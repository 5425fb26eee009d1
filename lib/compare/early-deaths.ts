import type { EndCause } from '../shop/vocabulary';
import type { EarlyDeaths } from './comparison';

/** The rule that proposes to hold a lot: so many early deaths among the first so many used. Common practice, no source. */
export const EARLY_DEATH_RULE = { among: 5, deaths: 2, beforeShareOfLife: 0.25 } as const;

/** The first edge of one tool of a lot. */
export interface LotTool {
  readonly toolId: string;
  readonly firstUsedAtMs: number;
  /** Why its first edge ended; null while it still cuts. */
  readonly cause: EndCause | null;
  /** What it had cut by then, as a share of a typical life. */
  readonly usedShare: number;
}

/** Causes that may be the lot's doing. Dropped, cross-threaded or galled says something about the bench, not about the lot. */
const LOT_CAUSES: readonly EndCause[] = ['chipped-early', 'bad-lot'];

/**
 * Early deaths in a lot: chipped or faulty before a quarter of a typical life, among the first five that were used. Two of
 * them, or one that was found faulty from the maker, propose to hold the lot and look at what is left of it; one early chip
 * says little. Order of the tools does not matter. Source: common practice, no source.
 */
export function earlyDeaths(lot: string, tools: readonly LotTool[]): EarlyDeaths {
  const first = [...tools]
    .sort((a, b) => a.firstUsedAtMs - b.firstUsedAtMs || (a.toolId < b.toolId ? -1 : 1))
    .slice(0, EARLY_DEATH_RULE.among);
  const early = first.filter(
    ({ cause, usedShare }) =>
      cause !== null && LOT_CAUSES.includes(cause) && usedShare < EARLY_DEATH_RULE.beforeShareOfLife,
  );
  const faulty = tools.filter(({ cause }) => cause === 'bad-lot');
  return {
    lot,
    looked: first.length,
    early: early.length,
    toolIds: [...new Set([...early, ...faulty].map(({ toolId }) => toolId))].sort(),
    proposeHold: early.length >= EARLY_DEATH_RULE.deaths || faulty.length > 0,
  };
}
