import { expect, it } from 'vitest';
import { holdsAll } from '@/db/ledger/same-content';

it('the order of fields says nothing, at any depth', () => {
  expect(holdsAll({ a: 1, b: { c: [1, 2], d: null } }, { b: { d: null, c: [1, 2] }, a: 1 })).toBe(true);
});

it('another value, another order of a list, or a field that is missing is other content', () => {
  expect(holdsAll({ a: 1 }, { a: 2 })).toBe(false);
  expect(holdsAll({ a: [1, 2] }, { a: [2, 1] })).toBe(false);
  expect(holdsAll({}, { a: null })).toBe(false);
  expect(holdsAll({ a: '1' }, { a: 1 })).toBe(false);
});

it('what was not sent, and exposure at any depth, is not compared', () => {
  expect(holdsAll({ a: 1, cutAtMs: 5 }, { a: 1 })).toBe(true);
  expect(
    holdsAll({ exposureMicro: 1, o: { exposureMicro: 2, n: 1 } }, { exposureMicro: 3, o: { n: 1 } }),
  ).toBe(true);
});
