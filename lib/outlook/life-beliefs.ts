import { invariant } from '../invariant';
import type { FirstGuess } from '../life/first-guess';
import { defaultLifePriors, type LifePriors, normal, type Prior } from '../life/priors';
import { normalQuantile } from '../numeric/normal';
import type { Belief } from '../shop/belief';
import type { Connection, LifeGuess, Material } from '../shop/noun';
import type { Part } from '../shop/part';
import type { EdgeKind } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import type { ShopFacts } from './shop-facts';

/** Key of the reference material of a shop that has none yet. */
const NO_REFERENCE = 'reference';

/**
 * What is believed of one kind of edge before the log speaks: this project's defaults, the shop's own beliefs where it
 * set them, and the shop's material table in place of the published factors.
 */
export function lifePriors(
  kind: EdgeKind,
  materials: readonly Material[],
  beliefs: readonly Belief[] = [],
): LifePriors {
  const referenceMaterialId = materials.find((material) => material.isReference)?.id ?? NO_REFERENCE;
  const others = materials.filter((material) => material.id !== referenceMaterialId);
  const defaults = defaultLifePriors(kind, { referenceMaterialId, materials: [] });
  const own = beliefs.find((belief) => belief.kind === kind);
  return {
    ...defaults,
    ...(own && ownPriors(own, defaults)),
    materials: others.map(({ id, factor, factorGiveOrTake }) => ({
      materialId: id,
      logFactor: logNormal({ typical: factor, giveOrTake: factorGiveOrTake }),
    })),
  };
}

function ownPriors(own: Belief, defaults: LifePriors): Partial<LifePriors> {
  return {
    logShape: logNormal(own.shape),
    regrind: logNormal(own.regrind),
    dry: logNormal(own.dry),
    rework: logNormal(own.rework),
    part: logNormal({ typical: 1, giveOrTake: own.partGiveOrTake }),
    incident: { ...defaults.incident, livesPerIncident: own.livesPerIncident },
    ...(own.longTailPercent !== undefined && { logLogisticChance: own.longTailPercent / 100 }),
  };
}

/** "Give or take a factor g" is the 10–90 % band: the log is normal with sd = ln g ÷ 1.2816. */
function logNormal({ typical, giveOrTake }: { typical: number; giveOrTake: number }): Prior {
  return normal(Math.log(typical), Math.log(giveOrTake) / normalQuantile(0.9));
}

/** The defaults in the words of the screen, for a kind whose beliefs the shop has not set. */
export function defaultBelief(kind: EdgeKind): Belief {
  const priors = defaultLifePriors(kind, { referenceMaterialId: NO_REFERENCE, materials: [] });
  return {
    kind,
    shape: inWords(priors.logShape),
    regrind: inWords(priors.regrind),
    dry: inWords(priors.dry),
    rework: inWords(priors.rework),
    partGiveOrTake: inWords(priors.part).giveOrTake,
    livesPerIncident: priors.incident.livesPerIncident,
    longTailPercent: 100 * (priors.logLogisticChance ?? 0),
  };
}

function inWords(prior: Prior): { typical: number; giveOrTake: number } {
  invariant(prior.form === 'normal', 'the default beliefs are normal in the log');
  return { typical: Math.exp(prior.mean), giveOrTake: Math.exp(prior.sd * normalQuantile(0.9)) };
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
  const operation = part.role === 'blade' ? 'cone' : 'thread';
  return {
    partId: part.id,
    odIn: connection.odNum / connection.odDen,
    lifeBase: guess.ends * exposureOfEnd({ operation, connection }),
    factor: guess.giveOrTake,
  };
}
