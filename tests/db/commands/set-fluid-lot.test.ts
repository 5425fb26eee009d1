import { expect, it } from 'vitest';
import { setFluidLot } from '@/db/commands/set-fluid-lot';
import { setNoun } from '@/db/commands/set-noun';
import { SetFluidLotInput } from '@/lib/shop/fluid-input';
import { ENV, entered, envelope, may, must, part, sentence, testShop } from '../../support/db';
import { sender } from '../../support/send';

const LOT = { partId: 'thread-oil', lot: 'L03', shelfLife: 'extendable', chlorinated: 'yes' };

// source: hand. What was sent before is answered as it was then, whatever became of its product; a new lot needs the product.
it('answers a repeat as recorded although the product has gone meanwhile', () => {
  const db = testShop();
  const oil = envelope();
  const value = part({ id: 'thread-oil', role: 'fluid' });
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value, envelope: oil }, ENV));
  const stamp = entered();
  const write = (lot: object, over: object = stamp) =>
    setFluidLot(db, may('keep-fluid'), SetFluidLotInput.parse({ ...over, lot }), ENV);
  const first = must(write(LOT));
  const { reverse } = sender(db);
  must(reverse(first.id));
  must(reverse(oil.id));
  expect(must(write(LOT))).toEqual({ ...first, alreadyRecorded: true });
  expect(sentence(write({ ...LOT, chlorinated: 'no' }))).toMatch(/already used/);
  expect(sentence(write({ ...LOT, lot: 'L04' }, entered()))).toMatch(/knows no such fluid/);
});
