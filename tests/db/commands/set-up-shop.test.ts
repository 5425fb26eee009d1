import { beforeEach, describe, expect, it } from 'vitest';
import { addSizes, foundShop } from '@/db/commands/set-up-shop';
import { replay } from '@/db/ledger/replay';
import type { Db } from '@/db/open';
import { findShop, listPeople } from '@/db/queries/shop';
import { listConnections, listLifeGuesses, listMaterials, listParts } from '@/db/queries/tables';
import { SET_UP } from '@/lib/access/actor';
import { AddSizesInput, FoundShopInput } from '@/lib/shop/set-up-input';
import { dump, ENV, entered, may, must, sentence, testDb } from '../../support/db';

let db: Db;
beforeEach(() => {
  db = testDb();
});

const input = {
  shop: { name: 'A shop' },
  person: { id: 'robin', name: 'Robin Vale', role: 'lead' },
  connectionIds: ['3-8-medium'],
};
const found = (change: object = {}) =>
  foundShop(db, may('set-up-shop', SET_UP), FoundShopInput.parse({ ...entered(), ...input, ...change }), ENV);
const add = (connectionIds: readonly string[], change: object = {}) =>
  addSizes(db, may('set-up-shop'), AddSizesInput.parse({ ...entered(), connectionIds, ...change }), ENV);
const sizes = () => listConnections(db).map(({ id }) => id);

// source: hand. A shop, a person, 7 materials, a size, the 17 roles of its complete set and a guess for die and blade: 29.
describe('foundShop', () => {
  it('writes down the shop, its first person, its sizes and everything a complete set for them needs', () => {
    expect(must(found()).count).toBe(29);
    expect(findShop(db)).toMatchObject({ name: 'A shop', units: 'in', requiredProbability: 0.9 });
    expect(listPeople(db)).toEqual([input.person]);
    expect(sizes()).toEqual(['3-8-medium']);
    expect([listMaterials(db).length, listParts(db).length, listLifeGuesses(db).length]).toEqual([7, 17, 2]);
    expect(listConnections(db).every(({ confirmed }) => !confirmed)).toBe(true);
  });

  it('sent twice counts once, and other content under the same ID is refused', () => {
    const once = { entryId: 'e'.repeat(64) };
    must(found(once));
    const before = dump(db);
    expect(must(found(once)).count).toBe(29);
    expect(sentence(found({ ...once, shop: { name: 'Another' } }))).toBe(
      'This entry ID was already used for something else.',
    );
    expect(dump(db)).toEqual(before);
  });

  it('refuses in a sentence, and changes nothing', () => {
    const empty = dump(db);
    expect(sentence(found({ connectionIds: ['3-8-medium', '1-high'] }))).toBe(
      'One of these sizes is not among the examples; add it by hand.',
    );
    expect(sentence(found({ person: { ...input.person, id: 'set-up', name: 'Set up' } }))).toBe(
      'Set up stands for the first set-up in the history. Choose another name.',
    );
    expect(dump(db)).toEqual(empty);
    must(found());
    const before = dump(db);
    expect(sentence(found())).toBe('This shop is set up already.');
    expect(dump(db)).toEqual(before);
  });
});

// source: hand. 3/8 high shares all but its blade, cone gauge and length gauge with 3/8 medium: three parts more.
describe('addSizes', () => {
  it('adds what the new size needs, and teaches the parts it shares to fit it', () => {
    must(found());
    must(add(['3-8-high']));
    expect(sizes()).toEqual(['3-8-medium', '3-8-high']);
    const parts = listParts(db);
    expect(parts).toHaveLength(20);
    expect(parts.find(({ role }) => role === 'die')?.fitsConnectionIds).toEqual(['3-8-high', '3-8-medium']);
  });

  it('leaves alone what the shop has set itself; a size that it has already adds nothing', () => {
    must(found());
    const before = dump(db);
    expect(must(add(['3-8-medium'])).count).toBe(0);
    expect(dump(db)).toEqual(before);
  });

  it('sent twice counts once', () => {
    must(found());
    must(add(['9-16-high'], { entryId: 'size-once' }));
    const before = dump(db);
    must(add(['9-16-high'], { entryId: 'size-once' }));
    expect(dump(db)).toEqual(before);
  });

  it('refuses a size that is no example, and changes nothing', () => {
    must(found());
    const before = dump(db);
    expect(sentence(add(['1-4-high', '1-high']))).toBe(
      'One of these sizes is not among the examples; add it by hand.',
    );
    expect(dump(db)).toEqual(before);
  });
});

// source: identity. The tables are what the ledger says.
it('the tables are equal to a replay of the ledger', () => {
  must(found());
  must(add(['9-16-high', '1-medium']));
  const fresh = testDb();
  replay(db, fresh);
  expect(dump(fresh)).toEqual(dump(db));
});
