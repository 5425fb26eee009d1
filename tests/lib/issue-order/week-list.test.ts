import { expect, it } from 'vitest';
import { issueWeeks, weekList } from '@/lib/issue-order/week-list';
import { issueShop } from '../../support/issue-shop';
import { lineFacts } from '../../support/shop-record';

const shop = issueShop({
  lines: [
    lineFacts({ id: 'J-1.1', ends: 8 }),
    lineFacts({ id: 'J-2.1', jobId: 'J-2', ends: 60 }),
    lineFacts({ id: 'J-3.1', jobId: 'J-3', ends: 5, startOnDay: '2026-03-18', dueOnDay: '2026-03-20' }),
  ],
});

// source: hand. 2 March 2026 is a Monday; the lines begin on the 9th and the 18th.
it('lists the weeks in which lines begin, this one among them', () => {
  expect(issueWeeks(shop.facts, shop.ensemble)).toEqual(['2026-03-02', '2026-03-09', '2026-03-16']);
  const list = weekList(shop.facts, shop.ensemble, '2026-03-09');
  expect(list.lines.map(({ lineId }) => lineId)).toEqual(['J-1.1', 'J-2.1']);
  expect(weekList(shop.facts, shop.ensemble, '2026-03-02').lines).toEqual([]);
});

// source: hand. First come, the 8 ends open the new die and the 60 must do with a used one; planned, both have a die that lasts.
it('says what planning gained over first-come', () => {
  const die = weekList(shop.facts, shop.ensemble, '2026-03-09').gains.find(({ kind }) => kind === 'die');
  expect(die?.lines).toBe(2);
  expect(die?.lasting).toBeGreaterThanOrEqual(die?.lastingFirstCome ?? 9);
  expect(die?.ends).toBeGreaterThan(die?.endsFirstCome ?? 99);
});
