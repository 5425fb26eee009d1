import fc from 'fast-check';
import { expect, it } from 'vitest';
import { assignTools } from '@/lib/issue-order/assign-tools';
import { chooseTool } from '@/lib/issue-order/choose-tool';
import { scattered, sure, task } from '../../support/edge-tasks';

// source: hand. The trade's own rule: of 8, 12 and 40 ends left, a job of 10 takes the 12.
it('takes the most worn tool that still finishes', () => {
  const tools = [sure('A', 8), sure('B', 12), sure('C', 40)];
  expect(chooseTool(task('1'), tools)?.toolId).toBe('B');
  expect(chooseTool(task('1', { ends: 60 }), tools)?.toolId).toBe('C');
  expect(chooseTool(task('1', { toolIds: ['A'] }), tools)).toEqual({
    toolId: 'A',
    probability: 0,
    madeEnds: 8,
  });
  expect(chooseTool(task('1', { toolIds: [] }), tools)).toBeUndefined();
});

// source: identity. For one line alone the week's plan says the same.
it('is the plan of a week with one line', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 2, max: 200 }), { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: 40 }),
      (means, ends) => {
        const tools = means.map((mean, i) => scattered(['A', 'B', 'C'][i] ?? 'A', mean));
        const line = task('1', { ends });
        expect(assignTools([line], tools).plan.get('1')).toBe(chooseTool(line, tools)?.toolId);
      },
    ),
  );
});
