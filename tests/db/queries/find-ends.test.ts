import { beforeAll, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { findEnds } from '@/db/queries/find-ends';
import { traceEnd } from '@/db/queries/trace';
import { acceptSender, acceptShop, CONE, GO, NG, planLine } from '../../support/accept-shop';
import { must } from '../../support/db';
import { sender } from '../../support/send';

let db: Db;
let last: string;
// source: hand. Two lines bear the same mark; one look has neither mark nor number; one end was refused.
beforeAll(() => {
  db = acceptShop();
  const { accept } = acceptSender(db);
  const send = sender(db);
  must(planLine(db, 'J-2', 10));
  must(send.cut('D-56-01', 1, { jobLineId: 'J-1.1' }));
  must(send.cut('D-56-01', 3, { jobLineId: 'J-1.1' }));
  must(
    accept(1, { firstEndNo: null, gauges: [{ ...GO, verdict: 'fail' }, NG, CONE], endMarks: ['S-18 end 3'] }),
  );
  must(accept(2, { firstEndNo: 1, endMarks: ['S-18 end 1', 'S-18 end 2'] }));
  must(accept(2, { firstEndNo: 3 }));
  must(accept(1, { jobLineId: 'J-2.1', firstEndNo: 1, endMarks: ['S-18 end 1'], heat: 'K 9' }));
  last = must(accept(2, { jobLineId: null })).id;
});
const found = (typed: string) => findEnds(db, typed).hits;

it('Q31: one search leads to one end, by its mark or by its line and number', () => {
  expect(found('s-18  END 2')).toMatchObject([
    { found: 'mark', jobLineId: 'J-1.1', endNo: 2, mark: 'S-18 end 2' },
  ]);
  expect(found('J-1.1 end 4')).toMatchObject([{ found: 'number', jobLineId: 'J-1.1', endNo: 4, mark: null }]);
  expect(found('J-1.1 end 5')).toEqual([]);
});

it('several ends answer a mark that two lines bear, the beginning of a mark, a job, a heat or a tool', () => {
  expect(
    found('S-18 end 1')
      .map(({ jobLineId }) => jobLineId)
      .sort(),
  ).toEqual(['J-1.1', 'J-2.1']);
  expect(
    found('s-18')
      .map(({ mark }) => mark)
      .sort(),
  ).toEqual([...['S-18 end 1', 'S-18 end 1', 'S-18 end 2', 'S-18 end 3']]);
  expect(found('S-1')).toEqual([]);
  expect(found('j-1')).toHaveLength(3);
  expect(found('k 9')).toMatchObject([{ found: 'heat', jobLineId: 'J-2.1' }]);
  for (const [id, by] of [
    ['g-56-go-1', 'gauge'],
    ['D-56-01', 'edge'],
    ['B-56-01', 'edge'],
    ['F-L01', 'fluid'],
  ] as const) {
    expect(new Set(found(id).map((hit) => hit.found)), id).toEqual(new Set([by]));
    expect(found(id), id).toHaveLength(5);
  }
  expect(findEnds(db, 'D-56-01', 2)).toMatchObject({ hits: [{}, {}], more: 3 });
  expect(found('%')).toEqual([]);
  expect(found('')).toEqual([]);
});

it('an end without mark and number is traced by its look, and so is a refused one', () => {
  expect(traceEnd(db, { acceptanceId: last })).toMatchObject({ jobLineId: null, endNo: null, mark: null });
  const [refused] = found('S-18 end 3');
  expect(refused).toMatchObject({ decision: 'refused' });
  expect(traceEnd(db, { acceptanceId: refused?.acceptanceId ?? '' })?.looks).toMatchObject([
    { cause: 'go-tight' },
  ]);
  expect(traceEnd(db, { acceptanceId: 'none' })).toBeUndefined();
});
