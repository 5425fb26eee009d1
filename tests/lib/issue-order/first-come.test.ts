import { expect, it } from 'vitest';
import { firstComePlan } from '@/lib/issue-order/first-come';
import { sure, task } from '../../support/edge-tasks';

// source: hand. In start order each takes the fullest that is free: C for line 1; B for line 2, which runs beside it; C again, with
// 30 left of 40, for line 3 on the day after.
it('takes the fullest tool that is free', () => {
  const tasks = [task('1'), task('2'), task('3', { startOnDay: '2026-11-28', dueOnDay: '2026-11-28' })];
  const plan = firstComePlan(tasks, [sure('A', 10), sure('B', 20), sure('C', 40)]);
  expect([...plan]).toEqual([
    ['1', 'C'],
    ['2', 'B'],
    ['3', 'C'],
  ]);
});

// source: hand. Where all are taken, a line goes without.
it('leaves a line without a tool when all are taken', () => {
  expect([...firstComePlan([task('1'), task('2')], [sure('A', 10)])]).toEqual([['1', 'A']]);
});
