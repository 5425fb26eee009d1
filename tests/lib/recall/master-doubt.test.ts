import { expect, it } from 'vitest';
import { discountDoubted, type MasterRecall, restsOnDoubt } from '@/lib/recall/master-doubt';

const noon = (day: string) => Date.parse(`${day}T12:00:00Z`);
const recall: MasterRecall = {
  ...{ id: 'SP-1.R1', gaugeId: 'SP-1', foundOnDay: '2026-06-10' },
  ...{ evidenceOnDay: '2026-01-10', windowFromMs: noon('2026-01-10'), windowToMs: noon('2026-06-10') },
};
const check = (onDay: string, over: { againstToolId?: string | null; atMs?: number } = {}) => ({
  ...{ againstToolId: 'SP-1', onDay, atMs: noon(onDay), qualifies: true },
  ...over,
});

// source: hand. The plug was last known good on 10 January at noon and found out on 10 June at noon.
it('a check rests on the master where it was made on it in between', () => {
  const said = [
    check('2026-01-09'),
    check('2026-01-10'),
    check('2026-01-11'),
    check('2026-06-10'),
    check('2026-06-11'),
    check('2026-03-01', { againstToolId: 'SP-2' }),
    check('2026-03-01', { againstToolId: null }),
  ].map((one) => restsOnDoubt(one, recall));
  expect(said).toEqual([false, false, true, true, false, false, false]);
});

it('one written down after the finding counts by its own day', () => {
  expect(restsOnDoubt(check('2026-03-01', { atMs: noon('2026-06-20') }), recall)).toBe(true);
  expect(restsOnDoubt(check('2026-06-10', { atMs: noon('2026-06-20') }), recall)).toBe(false);
});

it('a master that nothing ever showed good casts doubt on everything up to the finding', () => {
  const never = { ...recall, evidenceOnDay: null, windowFromMs: null };
  expect(restsOnDoubt(check('2019-01-01'), never)).toBe(true);
  expect(restsOnDoubt(check('2026-07-01'), never)).toBe(false);
});

it('what rests on it counts no more, and nothing else changes', () => {
  const list = [check('2026-01-05'), check('2026-02-05'), check('2026-02-06', { againstToolId: 'SP-2' })];
  expect(discountDoubted(list, [recall])).toEqual([list[0], { ...list[1], qualifies: false }, list[2]]);
  expect(discountDoubted(list, [])).toEqual(list);
});
