import { expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { claimByRole, isMaterialKnown, linesThatGo } from '@/lib/capability/line-claims';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import type { PlanLine } from '@/lib/capability/plan-input';
import { completeSet, planLine, plentifulDraws, setWith, TODAY } from '../../support/plan-shop';

function ready(lines: PlanLine[], items = completeSet()) {
  const queue = queueLines(lines, [{ connectionId: 'S', hand: 'LH' }], TODAY);
  const context = { today: TODAY, lineDueOnDay: new Map<string, string>() };
  const find = indexCandidates(listCandidates(items, [], context));
  return { queue, statuses: queue.map((queued) => needStatuses(queued, find)) };
}

const draws = plentifulDraws();

// source: hand. Each line lacks one thing: a material, a table row, a collet; or only asks.
it('a line goes where everything that it needs has a date', () => {
  const lines = [
    planLine({ lineId: 'A' }),
    planLine({ lineId: 'B', materialId: 'unknown' }),
    planLine({ lineId: 'C', connectionId: 'X' }),
    planLine({ lineId: 'D', asksOnly: true }),
  ];
  const { queue, statuses } = ready(lines);
  expect(queue.map((queued) => isMaterialKnown(queued, draws))).toEqual([true, false, true, true]);
  expect(linesThatGo(queue, statuses, draws)).toEqual([true, false, false, false]);
  const without = ready([planLine()], setWith('collet', null));
  expect(linesThatGo(without.queue, without.statuses, draws)).toEqual([false]);
});

// source: hand. One set, two lines that overlap: the second is refused what one line holds, not what is handed across.
it('tells the second line which roles the first one has', () => {
  const { queue, statuses } = ready([planLine({ lineId: 'A' }), planLine({ lineId: 'B' })]);
  const [first, second] = claimByRole(queue, statuses, [true, true]);
  expect([...(first?.keys() ?? [])]).toEqual([]);
  expect(second?.get('die')).toMatchObject({ heldByLineId: 'A', untilDay: '2026-03-13' });
  expect(second?.has('brush')).toBe(false);
  expect(claimByRole(queue, statuses, [false, true])[1]?.size).toBe(0);
});
