import type { Connection, LifeGuess, Material } from '../shop/noun';
import type { Part } from '../shop/part';
import { completeSetParts } from './complete-set-parts';
import { firstGuesses } from './first-guesses';
import { SHIPPED_MATERIALS } from './materials';

/** What a shop has in its tables already. */
export interface KnownTables {
  readonly connections: readonly Connection[];
  readonly materials: readonly Material[];
  readonly parts: readonly Part[];
  readonly guesses: readonly LifeGuess[];
}

/** What is to be written down so that a shop keeps more sizes. */
export interface SizeAdditions {
  readonly materials: readonly Material[];
  readonly connections: readonly Connection[];
  readonly parts: readonly Part[];
  readonly guesses: readonly LifeGuess[];
}

/**
 * What taking more sizes into use adds to a shop's tables: the sizes, the parts of a complete set for each, first guesses
 * of how long their edges last, and the materials where there are none yet. What the shop has set itself is left as it is;
 * a part that it has already only learns to fit the new sizes too.
 */
export function additionsForSizes(added: readonly Connection[], known: KnownTables): SizeAdditions {
  const connections = added.filter(({ id }) => !known.connections.some((row) => row.id === id));
  const materials = known.materials.length === 0 ? SHIPPED_MATERIALS : [];
  const tables = {
    connections: [...known.connections, ...connections],
    materials: [...known.materials, ...materials],
  };
  const parts = new Map<string, Part>();
  const guesses = new Map<string, LifeGuess>();
  for (const connection of connections) {
    for (const part of completeSetParts(connection, tables)) {
      const own = known.parts.find(({ id }) => id === part.id);
      parts.set(part.id, own === undefined ? part : { ...own, fitsConnectionIds: union(own, part) });
    }
    for (const guess of firstGuesses(connection)) {
      const typed = known.guesses.some(({ partId }) => partId === guess.partId);
      if (!typed && !guesses.has(guess.partId)) guesses.set(guess.partId, guess);
    }
  }
  return { materials, connections, parts: [...parts.values()], guesses: [...guesses.values()] };
}

function union(own: Part, offered: Part): string[] {
  return [...new Set([...own.fitsConnectionIds, ...offered.fitsConnectionIds])];
}
