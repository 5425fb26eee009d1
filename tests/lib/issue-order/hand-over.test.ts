import { expect, it } from 'vitest';
import { handOverOf } from '@/lib/issue-order/hand-over';
import { planWeeks } from '@/lib/issue-order/week-plan';
import { sure, task } from '../../support/edge-tasks';

// source: hand. The holder is due on Friday the 27th: Saturday. Nobody holds it but it is out until the 30th: then. None fits: null.
it('names the tool that is free first', () => {
  const holder = task('1', { toolIds: ['A'] });
  const waits = task('2', { toolIds: ['A'] });
  const weeks = planWeeks([holder, waits], [sure('A', 100)]);
  expect(handOverOf({ task: waits }, weeks)).toEqual({ toolId: 'A', onDay: '2026-11-28', fromLineId: '1' });
  const out = { ...waits, freeFromDay: new Map([['B', '2026-11-30']]) };
  expect(handOverOf({ task: out }, weeks)).toEqual({ toolId: 'B', onDay: '2026-11-30', fromLineId: null });
  expect(handOverOf({ task: { ...waits, freeFromDay: new Map() } }, weeks)).toBeNull();
});
