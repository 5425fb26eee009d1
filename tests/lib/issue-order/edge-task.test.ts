import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compareTasks, meanLife, overlaps, toolWork } from '@/lib/issue-order/edge-task';
import { scattered, sure, task } from '../../support/edge-tasks';

// source: hand. 25 units do 10 ends at one unit and then 7 whole ends at two: 15 left, 7.5 ends of which half an end is none.
it('cuts whole ends and hands the rest on', () => {
  const { work, left } = toolWork(sure('A', 25).life, [task('1'), task('2', { each: 2 })]);
  expect(work).toEqual([
    { probability: 1, madeEnds: 10 },
    { probability: 0, madeEnds: 7 },
  ]);
  expect(meanLife(left)).toBe(0);
});

// source: identity. What is cut and what is left make up what there was, as long as the edge lasts; never more ends than wanted.
it('spends no more than there is', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (mean, ends) => {
      const { life } = scattered('A', mean);
      const { work, left } = toolWork(life, [task('1', { ends })]);
      expect(work[0]?.madeEnds).toBeLessThanOrEqual(ends);
      expect(meanLife(left)).toBeLessThanOrEqual(meanLife(life) - (work[0]?.madeEnds ?? 0) + 1e-9);
    }),
  );
});

// source: hand. Both days count: a line due on Friday and one that starts on Friday run on the same day.
it('knows what runs at the same time', () => {
  const friday = task('2', { startOnDay: '2026-11-27', dueOnDay: '2026-12-01' });
  expect(overlaps(task('1'), friday)).toBe(true);
  expect(overlaps(task('1'), { ...friday, startOnDay: '2026-11-28' })).toBe(false);
  expect([friday, task('2'), task('1')].sort(compareTasks).map(({ lineId }) => lineId)).toEqual([
    '1',
    '2',
    '2',
  ]);
});
