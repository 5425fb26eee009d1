import { beforeEach, expect, it } from 'vitest';
import { type Noun, setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { DIE, dump, ENV, envelope, HIGH, may, must, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
beforeEach(() => {
  db = testShop();
});

const set = (noun: Noun, over = {}) =>
  setNoun(db, may('set-up-shop'), { ...noun, envelope: envelope(over) }, ENV);

it('the last entry of a noun is what it is', () => {
  must(set({ noun: 'shop', value: ShopSchema.parse({ name: 'First' }) }));
  must(set({ noun: 'shop', value: ShopSchema.parse({ name: 'Second', units: 'mm' }) }));
  expect(dump(db).shop).toHaveLength(1);
  expect(row(db, 'shop', 'id', 'shop')).toMatchObject({ name: 'Second', units: 'mm', currency: 'USD' });
});

it('a part set again serves what it now says', () => {
  must(set({ noun: 'part', value: { ...DIE, fitsConnectionIds: [HIGH.id], permittedMaterialIds: ['316'] } }));
  const fits = db.$client
    .prepare(`SELECT connection_id FROM part_fit WHERE part_id = 'die-56'`)
    .pluck()
    .all();
  expect(fits).toEqual([HIGH.id]);
  expect(row(db, 'part_permit', 'part_id', 'die-56')).toEqual({ part_id: 'die-56', material_id: '316' });
});

it('sent twice it counts once', () => {
  const noun: Noun = {
    noun: 'guess',
    value: { partId: DIE.id, connectionId: HIGH.id, ends: 150, giveOrTake: 2 },
  };
  must(set(noun, { id: 'guess-once' }));
  const before = dump(db);
  expect(must(set(noun, { id: 'guess-once' })).alreadyRecorded).toBe(true);
  expect(sentence(set({ ...noun, value: { ...noun.value, ends: 160 } } as Noun, { id: 'guess-once' }))).toBe(
    'This entry ID was already used for something else.',
  );
  expect(dump(db)).toEqual(before);
});

// source: hand. What was recorded is answered as recorded, although what it names has been taken back since.
it('a repeat is answered although what it names has gone meanwhile', () => {
  const spare = envelope();
  must(set({ noun: 'part', value: { ...DIE, id: 'die-spare' } }, spare));
  const guess = { partId: 'die-spare', connectionId: HIGH.id, ends: 150, giveOrTake: 2 };
  const once = { id: 'guess-lost' };
  must(set({ noun: 'guess', value: guess }, once));
  const { reverse } = sender(db);
  must(reverse(once.id));
  must(reverse(spare.id));
  expect(must(set({ noun: 'guess', value: guess }, once)).alreadyRecorded).toBe(true);
  expect(sentence(set({ noun: 'guess', value: guess }))).toMatch(/knows no such part/);
});

it('refuses in a sentence, and changes nothing', () => {
  const before = dump(db);
  const guess = { partId: DIE.id, connectionId: HIGH.id, ends: 150, giveOrTake: 2 };
  expect([
    sentence(set({ noun: 'connection', value: { ...HIGH, noseMm: 20 } })),
    sentence(set({ noun: 'part', value: { ...DIE, fitsConnectionIds: ['1-high'] } })),
    sentence(set({ noun: 'part', value: { ...DIE, permittedMaterialIds: ['tin'] } })),
    sentence(set({ noun: 'part', value: { ...DIE, role: 'blade' } })),
    sentence(set({ noun: 'guess', value: { ...guess, partId: 'none' } })),
    sentence(set({ noun: 'guess', value: { ...guess, connectionId: '1-high' } })),
  ]).toEqual([
    'The cone’s small end must be smaller than the tube outside diameter.',
    '9/16 die is to serve 1-high, for which the shop has no table row. Add it first.',
    '9/16 die is permitted on tin, a material the shop does not know. Add it first.',
    '9/16 die is entered as a threading die; enter a new part for a coning blade.',
    'Choose the part first: the shop knows no such part.',
    'Choose a size and service from the table.',
  ]);
  expect(dump(db)).toEqual(before);
});
