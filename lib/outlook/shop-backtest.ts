import { partChangeCosts } from '../end-costs/rule-costs';
import { type RuleCounts, ruleCounts } from '../end-costs/rule-counts';
import type { FirstGuess } from '../life/first-guess';
import type { LifePriors } from '../life/priors';
import { allowedRegrinds } from '../replacement/edge-price';
import { type BacktestInput, backtest } from '../score/backtest';
import { DEFAULT_COSTS } from '../shop/costs';
import type { EdgeKind } from '../shop/vocabulary';
import { firstGuesses, lifePriors } from './life-beliefs';
import { logEvents } from './log-events';
import { type ScoreSummary, scoreSummary } from './score-summary';
import type { ShopFacts } from './shop-facts';
import type { ToolLog } from './stored-predictions';

/** A shop's record as a replay takes it. */
export interface ShopLog {
  readonly logs: readonly ToolLog[];
  readonly lineEnds: ReadonlyMap<string, number>;
  readonly facts: Pick<
    ShopFacts,
    'parts' | 'connections' | 'materials' | 'guesses' | 'beliefs' | 'readingSettings' | 'costs'
  >;
}

/** What a replay of the whole log found. `rows`: rows of the log for which something would have been said. */
export interface ShopBacktest extends ScoreSummary {
  readonly rows: number;
  /** What changing by the estimate and changing at a fixed count would have led to, by part. */
  readonly rules: readonly RuleCounts[];
}

/**
 * What would have been said at every row of the shop's own log, from only what was known then, and how it turned out; beside
 * the shop's fixed count: an edge is changed after as many ends as its first guess says.
 */
export function shopBacktest(log: ShopLog): ShopBacktest {
  const input = shopBacktestInput(log);
  const cases = backtest(input);
  const factors = new Map(log.facts.materials.map(({ id, factor }) => [id, factor]));
  return {
    rows: cases.length,
    rules: ruleCounts(input.events, cases, (materialId) => factors.get(materialId) ?? 1),
    ...scoreSummary(cases.map(({ prediction }) => prediction)),
  };
}

export function shopBacktestInput({ logs, lineEnds, facts }: ShopLog): BacktestInput {
  const { parts, connections, materials, guesses, beliefs, readingSettings, costs = DEFAULT_COSTS } = facts;
  const changeAt = new Map(guesses.map(({ partId, ends }) => [partId, ends]));
  const priors = (kind: EdgeKind): LifePriors => lifePriors(kind, materials, beliefs);
  const typed = (kind: EdgeKind): FirstGuess[] => firstGuesses(kind, facts);
  return {
    events: logEvents(logs, { parts, connections, lineEnds, readingSettings }),
    priors: { blade: priors('blade'), die: priors('die') },
    guesses: { blade: typed('blade'), die: typed('die') },
    changeAtEnds: (partId) => changeAt.get(partId),
    changing: (partId) => {
      const part = parts.find(({ id }) => id === partId);
      const change = part && partChangeCosts(part, costs);
      // The middle edge of a blade stands for all of its edges.
      return change ? { costs: change, regrinds: Math.round(allowedRegrinds(part, costs) / 2) } : undefined;
    },
  };
}
