import { expect, it } from 'vitest';
import { planWeeks } from '@/lib/issue-order/week-plan';
import { sure, task } from '../../support/edge-tasks';

// source: hand. Week 48: 10 ends on the die of 12. Week 49: 2 are left on it, so the 10 ends go on the die of 40.
it('hands what a week has left on to the next', () => {
  const next = task('2', { startOnDay: '2026-11-30', dueOnDay: '2026-12-01' });
  const weeks = planWeeks([task('1'), next], [sure('A', 12), sure('B', 40)]);
  expect(weeks.map(({ fromDay }) => fromDay)).toEqual(['2026-11-23', '2026-11-30']);
  expect(weeks.map(({ lines }) => lines[0]?.toolId)).toEqual(['A', 'B']);
  expect(weeks[1]?.lines[0]?.lives.get('A')?.[0]).toBe(2);
});

// source: hand. A line that runs into the next week keeps its die.
it('takes no tool from a line of the week before', () => {
  const runs = task('1', { dueOnDay: '2026-12-02', toolIds: ['A'] });
  const next = task('2', { startOnDay: '2026-11-30', dueOnDay: '2026-12-01', toolIds: ['A'] });
  const weeks = planWeeks([runs, next], [sure('A', 100)]);
  expect(weeks[1]?.lines[0]?.toolId).toBeNull();
});
