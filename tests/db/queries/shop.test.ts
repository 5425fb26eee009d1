import { expect, it } from 'vitest';
import { setNoun } from '@/db/commands/set-noun';
import { findActor, findShop, listPeople } from '@/db/queries/shop';
import { ShopSchema } from '@/lib/shop/shop-settings';
import { ENV, envelope, may, must, testDb, testShop } from '../../support/db';

const shop = ShopSchema.parse({ name: 'A shop', units: 'mm', fluidWasteFactor: 4 });

// source: identity. What is read is what was set.
it('findShop gives the settings as they were set, and nothing before', () => {
  const db = testDb();
  expect(findShop(db)).toBeUndefined();
  must(setNoun(db, may('set-up-shop'), { noun: 'shop', value: shop, envelope: envelope() }, ENV));
  expect(findShop(db)).toEqual(shop);
});

// source: hand. Stated.
it('listPeople gives everyone by role and name; an empty shop has nobody', () => {
  const db = testShop();
  const value = { id: 'bo', name: 'Bo Ayer', role: 'technician' } as const;
  must(setNoun(db, may('set-up-shop'), { noun: 'person', value, envelope: envelope() }, ENV));
  expect(listPeople(db).map(({ id }) => id)).toEqual(['robin', 'ash', 'bo']);
  expect(listPeople(testDb())).toEqual([]);
});

it('findActor knows the people of the shop by key, and nobody else', () => {
  const db = testShop();
  expect(findActor(db, 'ash')).toEqual({ personId: 'ash', name: 'Ash Moor', role: 'technician' });
  expect(findActor(db, 'Ash')).toBeUndefined();
  expect(findActor(db, 'set-up')).toBeUndefined();
});
