import { expect, it } from 'vitest';
import { followOn, succession } from '@/lib/issue-order/follow-on';
import { DRAWS, scattered, sure, task } from '../../support/edge-tasks';

// source: hand. 25 ends: A makes 12 of 12.5, B 8, and 5 are left to C of 9: one change to B and one to C; C has 4 left.
it('cuts whole ends with one edge after the other', () => {
  const chain = succession(task('1', { ends: 25 }), [sure('A', 12.5), sure('B', 8), sure('C', 9)]);
  expect(chain).toMatchObject({ toolIds: ['A', 'B', 'C'], probability: 1, changes: 2 });
  expect([...chain.left].map(([id, life]) => [id, life[0]])).toEqual([
    ['A', 0],
    ['B', 0],
    ['C', 4],
  ]);
});

// source: hand. Half the draws last for 10 ends, so a second edge is needed in the other half.
it('counts how often a change falls into the line', () => {
  const half = { toolId: 'A', life: Float64Array.from({ length: DRAWS }, (_, k) => (k % 2 === 0 ? 20 : 5)) };
  expect(succession(task('1'), [half, sure('B', 10)])).toMatchObject({ probability: 1, changes: 0.5 });
});

// source: hand. The most worn of those that make it enough; none where the first is enough; what helps where nothing is enough.
it('adds the fewest and the most worn that are enough', () => {
  const spare = [sure('B', 3), sure('C', 20), sure('D', 60)];
  expect(followOn(task('1', { ends: 20 }), sure('A', 8), spare).toolIds).toEqual(['A', 'C']);
  expect(followOn(task('1', { ends: 5 }), sure('A', 8), spare).toolIds).toEqual(['A']);
  expect(followOn(task('1', { ends: 200 }), sure('A', 8), spare).toolIds[0]).toBe('A');
  expect(followOn(task('1'), undefined, [scattered('E', 100)]).toolIds.slice(0, 1)).toEqual(['E']);
});

// source: identity. Another edge never lowers the chance.
it('never grows less likely with another edge', () => {
  for (const mean of [5, 20, 80]) {
    const one = succession(task('1', { ends: 15 }), [scattered('A', 20)]);
    const two = succession(task('1', { ends: 15 }), [scattered('A', 20), scattered('B', mean)]);
    expect(two.probability).toBeGreaterThanOrEqual(one.probability);
  }
});
