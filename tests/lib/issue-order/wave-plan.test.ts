import { expect, it } from 'vitest';
import { wavePlan } from '@/lib/issue-order/wave-plan';
import { sure, task } from '../../support/edge-tasks';

// source: hand. Two lines at a time: 10 ends on the die of 12, 30 on that of 35; the third on the day after finds 2 and 5 left and a
// fresh die of 50, and takes that.
it('solves each wave on what the one before left', () => {
  const tasks = [
    task('a', { ends: 10 }),
    task('b', { ends: 30 }),
    task('c', { ends: 20, startOnDay: '2026-11-28', dueOnDay: '2026-11-28' }),
  ];
  const plan = wavePlan(tasks, [sure('A', 12), sure('B', 35), sure('C', 50)]);
  expect([...plan].sort()).toEqual([
    ['a', 'A'],
    ['b', 'B'],
    ['c', 'C'],
  ]);
});

// source: hand. A line that runs on keeps its tool from the next wave.
it('takes no tool from a line that is still running', () => {
  const tasks = [
    task('a', { dueOnDay: '2026-11-24', toolIds: ['A'] }),
    task('b', { dueOnDay: '2026-11-30', toolIds: ['B'] }),
    task('c', { startOnDay: '2026-11-26', toolIds: ['B'] }),
  ];
  expect([...wavePlan(tasks, [sure('A', 50), sure('B', 50)])].sort()).toEqual([
    ['a', 'A'],
    ['b', 'B'],
  ]);
});
