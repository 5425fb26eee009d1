import { expect, it } from 'vitest';
import { sharedPlan } from '@/lib/issue-order/shared-plan';
import { sure, task } from '../../support/edge-tasks';

const day = (at: number) => ({ startOnDay: `2026-11-${at}`, dueOnDay: `2026-11-${at}` });

// source: hand. 30, 20 and 10 ends on three days, dies of 40 and 21: the 20 go on the die of 21, the 30 and the 10 one after the
// other on that of 40. Taking the most worn for each as it comes would leave the 30 to the die of 40 and the 10 with 1 end.
it('looks at every way of sharing the tools', () => {
  const tasks = [
    task('a', { ends: 30, ...day(23) }),
    task('b', { ends: 20, ...day(24) }),
    task('c', { ends: 10, ...day(25) }),
  ];
  const plan = sharedPlan(tasks, [sure('A', 40), sure('B', 21)]);
  expect(plan && [...plan].sort()).toEqual([
    ['a', 'A'],
    ['b', 'B'],
    ['c', 'A'],
  ]);
});

// source: hand. Two lines on two days that the worn die does alone: the other stays whole.
it('opens no second edge where one does it all', () => {
  const plan = sharedPlan([task('a', day(23)), task('b', day(24))], [sure('A', 20), sure('B', 40)]);
  expect(plan && [...plan].sort()).toEqual([
    ['a', 'A'],
    ['b', 'A'],
  ]);
});

// source: hand. Fifteen lines are more than it looks at; so are fourteen of which no two overlap, with many tools.
it('says when there is too much to look at', () => {
  expect(
    sharedPlan(
      Array.from({ length: 15 }, (_, i) => task(`L${i}`)),
      [sure('A', 20)],
    ),
  ).toBeUndefined();
  const apart = Array.from({ length: 14 }, (_, i) => task(`L${i}`, day(10 + i)));
  expect(sharedPlan(apart, [sure('A', 20)])).toBeUndefined();
  expect(sharedPlan(apart.slice(0, 11), [sure('A', 20)])).toBeDefined();
});
