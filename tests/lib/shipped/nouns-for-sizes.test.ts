import { describe, expect, it } from 'vitest';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { SHIPPED_MATERIALS } from '@/lib/shipped/materials';
import { additionsForSizes, type KnownTables } from '@/lib/shipped/nouns-for-sizes';
import type { Connection } from '@/lib/shop/noun';

const EMPTY: KnownTables = { connections: [], materials: [], parts: [], guesses: [] };

function size(id: string): Connection {
  const found = SHIPPED_CONNECTIONS.find((connection) => connection.id === id);
  if (found === undefined) throw new Error(`no shipped connection ${id}`);
  return found;
}

// source: hand. What a complete set holds: common practice, no source.
describe('additionsForSizes', () => {
  it('gives an empty shop its materials, the size, a part for every item of a complete set, and two guesses', () => {
    const added = additionsForSizes([size('3-8-medium')], EMPTY);
    expect(added.materials).toEqual(SHIPPED_MATERIALS);
    expect(added.connections.map(({ id }) => id)).toEqual(['3-8-medium']);
    expect(new Set(added.parts.map(({ role }) => role)).size).toBe(17);
    expect(added.guesses).toHaveLength(2);
  });

  it('names only sizes that the shop has, so that no part refers to an unknown size', () => {
    const added = additionsForSizes([size('3-8-medium')], EMPTY);
    for (const part of added.parts) {
      for (const id of part.fitsConnectionIds) expect(id).toBe('3-8-medium');
    }
  });

  it('lets a die that the shop has serve the second service of its size, and keeps the shop’s own price and guess', () => {
    const first = additionsForSizes([size('9-16-medium')], EMPTY);
    const parts = first.parts.map((part) => (part.role === 'die' ? { ...part, priceMinor: 4200 } : part));
    const guesses = first.guesses.map((guess) => ({ ...guess, ends: 11 }));
    const known = { ...first, parts, guesses };
    const second = additionsForSizes([size('9-16-high'), size('9-16-medium')], known);
    expect(second.materials).toEqual([]);
    expect(second.connections.map(({ id }) => id)).toEqual(['9-16-high']);
    const die = second.parts.find(({ role }) => role === 'die');
    expect(die?.priceMinor).toBe(4200);
    expect([...(die?.fitsConnectionIds ?? [])].sort()).toEqual(['9-16-high', '9-16-medium']);
    expect(second.guesses.map(({ partId }) => partId)).toEqual(['blade-9-16-high']);
  });
});
