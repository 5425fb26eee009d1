import { expect, it } from 'vitest';
import { shortGroups } from '@/lib/issue-order/short-groups';
import { issueShop } from '../../support/issue-shop';
import { lineFacts } from '../../support/shop-record';

const lines = (long: number) => [
  lineFacts({ id: 'J-1.1', ends: long }),
  lineFacts({ id: 'J-2.1', jobId: 'J-2', ends: 20, startOnDay: '2026-03-16', dueOnDay: '2026-03-20' }),
];

// source: hand. Three dies near 100 threads each, 100 used: 300 ends are more than there is, so the 20 go first; 10 and 20 are no matter.
it('finds lines that the edges may not do for, and the order that finishes most', () => {
  const short = issueShop({ lines: lines(300) });
  const [group] = shortGroups(short.facts, short.ensemble).filter(({ kind }) => kind === 'die');
  expect(group?.inTurn.lineIds).toEqual(['J-1.1', 'J-2.1']);
  expect(group?.best.lineIds).toEqual(['J-2.1', 'J-1.1']);
  expect(group?.best.finished).toBeGreaterThan(group?.inTurn.finished ?? 2);
  const plenty = issueShop({ lines: lines(10) });
  expect(shortGroups(plenty.facts, plenty.ensemble).filter(({ kind }) => kind === 'die')).toEqual([]);
});
