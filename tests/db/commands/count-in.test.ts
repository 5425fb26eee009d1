import { beforeEach, expect, it } from 'vitest';
import { countIn } from '@/db/commands/count-in';
import type { Db } from '@/db/open';
import { listTools } from '@/db/queries/tools';
import { CountInInput } from '@/lib/shop/set-up-input';
import {
  BLADE,
  BODY,
  DIE,
  dump,
  ENV,
  entered,
  FLUID,
  may,
  must,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';

let db: Db;
beforeEach(() => {
  db = testShop();
});

function counted(partId: string, count: number, change: object = {}) {
  return { partId, count, opening: 'new', dueOnDay: null, levelMl: null, ...change };
}

function count(counts: readonly object[], change: object = {}) {
  const input = CountInInput.parse({ ...entered(), onDay: '2026-03-02', counts, ...change });
  return countIn(db, may('receive-tool'), input, ENV);
}

// source: hand. Of the test shop's parts die, blade and ring serve 9/16 in both services (code 56), the body too.
it('puts so many of each in the crib, each with a short ID of its own', () => {
  const counts = [
    counted(DIE.id, 2, { opening: 'unknown' }),
    counted(RING.id, 1, { dueOnDay: '2026-12-31' }),
    counted(FLUID.id, 1, { levelMl: 800 }),
  ];
  expect(must(count(counts)).toolIds).toEqual(['D-56-01', 'D-56-02', 'G-56-GO-1', 'F-L01']);
  expect(listTools(db)).toMatchObject([
    {
      id: 'D-56-01',
      hand: 'LH',
      state: 'in-crib',
      opening: { known: 'unknown' },
      receivedOnDay: '2026-03-02',
    },
    { id: 'D-56-02', opening: { known: 'unknown' } },
    { id: 'F-L01', levelMl: 800, opening: { known: 'new' } },
    { id: 'G-56-GO-1', dueOnDay: '2026-12-31' },
  ]);
});

// source: hand. D-56-07 is taken: the next is one above the highest.
it('goes on from the IDs that there are', () => {
  receive(db, 'D-56-07', DIE);
  expect(must(count([counted(DIE.id, 2)])).toolIds).toEqual(['D-56-08', 'D-56-09']);
});

it('sent twice it counts once and gives the same IDs', () => {
  for (const entryId of ['count-once', 'e'.repeat(64)]) {
    const counts = [counted(DIE.id, 2), counted(BLADE.id, 1)];
    const { toolIds } = must(count(counts, { entryId }));
    const before = dump(db);
    expect(must(count(counts, { entryId })).toolIds).toEqual(toolIds);
    expect(dump(db)).toEqual(before);
  }
});

it('two counts whose IDs begin alike are two counts', () => {
  const first = must(count([counted(DIE.id, 1)], { entryId: 'count-01' }));
  const second = must(count([counted(DIE.id, 1)], { entryId: 'count-01.7' }));
  expect([first.toolIds, second.toolIds]).toEqual([['D-56-01'], ['D-56-02']]);
});

it('other figures under the same ID are refused, and change nothing', () => {
  must(count([counted(DIE.id, 2)], { entryId: 'count-once' }));
  const before = dump(db);
  const again = (...counts: object[]) => sentence(count(counts, { entryId: 'count-once' }));
  const other = 'This count was already entered with other figures. Enter it as a new one.';
  expect(again(counted(DIE.id, 3))).toBe(other);
  expect(again(counted(DIE.id, 1))).toBe(other);
  expect(again(counted(BLADE.id, 2))).toBe('This entry ID was already used for something else.');
  expect(again(counted(DIE.id, 2, { opening: 'unknown' }))).toBe(
    'This entry ID was already used for something else.',
  );
  expect(dump(db)).toEqual(before);
});

it('is all or nothing: one that cannot be received keeps the others out', () => {
  const before = dump(db);
  expect(sentence(count([counted(DIE.id, 2), counted(RING.id, 1)]))).toBe(
    'A gauge needs the day its calibration runs out.',
  );
  expect(sentence(count([counted(BODY.id, 1), counted('none', 1)]))).toBe(
    'One of the things counted is not a part of this shop.',
  );
  expect(dump(db)).toEqual(before);
});

// source: hand. 2000 counted at once took seconds in which no other screen was answered; the bound is ours.
it('takes a thousand at once and no more', () => {
  const many = Array.from({ length: 6 }, () => counted(DIE.id, 200));
  const refused = CountInInput.safeParse({ ...entered(), onDay: '2026-03-02', counts: many });
  expect(refused.error?.issues[0]?.message).toBe(
    'Count at most 1000 things at once, and the rest afterwards.',
  );
  const { toolIds } = must(count(many.slice(0, 5)));
  expect([new Set(toolIds).size, toolIds[0], toolIds[999]]).toEqual([1000, 'D-56-01', 'D-56-1000']);
});
