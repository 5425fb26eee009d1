import type { FirstGuess } from '../life/first-guess';
import { defaultLifePriors, type LifePriors, normal } from '../life/priors';
import { normalQuantile } from '../numeric/normal';
import type { Connection, LifeGuess, Material, Part } from '../shop/noun';
import type { EdgeKind } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import { isEdgeKind } from './edge-histories';
import type { ShopFacts } from './shop-facts';

/** Key of the reference material of a shop that has none yet. */
const NO_REFERENCE = 'reference';

/**
 * What is believed of one kind of edge before the log speaks: this project's defaults, with the shop's own material
 * table in place of the published factors. "Give or take a factor g" is the 10–90 % band, so sd of the log = ln g ÷ 1.2816.
 */
export function lifePriors(kind: EdgeKind, materials: readonly Material[]): LifePriors {
  const referenceMaterialId = materials.find((material) => material.isReference)?.id ?? NO_REFERENCE;
  const others = materials.filter((material) => material.id !== referenceMaterialId);
  return {
    ...defaultLifePriors(kind, { referenceMaterialId, materials: [] }),
    materials: others.map(({ id, factor, factorGiveOrTake }) => ({
      materialId: id,
      logFactor: normal(Math.log(factor), Math.log(factorGiveOrTake) / normalQuantile(0.9)),
    })),
  };
}

/** The first guesses of one kind, from shop words ("about 150 threads of this size") to exposure. */
export function firstGuesses(
  kind: EdgeKind,
  facts: Pick<ShopFacts, 'guesses' | 'parts' | 'connections'>,
): FirstGuess[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  const connections = new Map(facts.connections.map((connection) => [connection.id, connection]));
  return facts.guesses.flatMap((guess) => {
    const part = parts.get(guess.partId);
    const connection = connections.get(guess.connectionId);
    return part?.role === kind && connection !== undefined ? [guessOf(guess, part, connection)] : [];
  });
}

function guessOf(guess: LifeGuess, part: Part, connection: Connection): FirstGuess {
  const operation = isEdgeKind(part.role) && part.role === 'blade' ? 'cone' : 'thread';
  return {
    partId: part.id,
    odIn: connection.odNum / connection.odDen,
    lifeBase: guess.ends * exposureOfEnd({ operation, connection }),
    factor: guess.giveOrTake,
  };
}
