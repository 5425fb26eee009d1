import { DEFAULT_DRAW_COUNT, type Ensemble, ensembleOver } from '../ensemble/build-ensemble';
import { type KindDraws, kindDrawsOf } from '../ensemble/kind-draws';
import { livesStillKnown } from '../ensemble/lives-still-known';
import { fitLife, type LifeFitInput } from '../life/fit-life';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import { edgeHistories } from './edge-histories';
import { firstGuesses, lifePriors } from './life-beliefs';
import type { ShopFacts } from './shop-facts';
import { partsOnOffer, toolsInHand } from './tools-in-hand';

/** The ensemble, with what its draws were made from: so that the next one need not draw again what has not moved. */
export interface ShopFutures {
  readonly ensemble: Ensemble;
  /** By kind: all that its fit was made from, as text. */
  readonly madeFrom: ReadonlyMap<EdgeKind, string>;
}

/**
 * The shop's futures: both kinds fitted to its record, every tool that can still cut, every part. `before`: futures of an
 * earlier record. A kind whose edges, beliefs and guesses are still the same is not fitted again, and a tool that cut
 * nothing since keeps its lives: the figures are those of a fresh start, to the last bit, only sooner.
 */
export function shopFutures(facts: ShopFacts, before?: ShopFutures): ShopFutures {
  const histories = edgeHistories(facts);
  const byKind = new Map<EdgeKind, KindDraws>();
  const madeFrom = new Map<EdgeKind, string>();
  for (const kind of EDGE_KINDS) {
    const input: LifeFitInput = {
      kind,
      histories: histories.filter((history) => history.kind === kind),
      priors: lifePriors(kind, facts.materials, facts.beliefs),
      guesses: firstGuesses(kind, facts),
    };
    const key = JSON.stringify(input);
    const same = before?.madeFrom.get(kind) === key;
    const draws = same ? before.ensemble.draws(kind) : drawsOf(input);
    madeFrom.set(kind, key);
    if (draws !== undefined) byKind.set(kind, draws);
  }
  const hands = { tools: toolsInHand(facts), parts: partsOnOffer(facts), drawCount: DEFAULT_DRAW_COUNT };
  const known = before && livesStillKnown(before.ensemble, byKind, hands.tools);
  return { ensemble: ensembleOver(byKind, hands, known), madeFrom };
}

function drawsOf(input: LifeFitInput): KindDraws | undefined {
  const fit = fitLife(input);
  return fit.ok ? kindDrawsOf(fit, DEFAULT_DRAW_COUNT) : undefined;
}
