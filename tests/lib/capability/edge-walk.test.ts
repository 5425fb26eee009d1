import { describe, expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { poolLives } from '@/lib/capability/edge-pools';
import { walkEdge } from '@/lib/capability/edge-walk';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import type { PlanLine } from '@/lib/capability/plan-input';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, planLine, setItem, TODAY } from '../../support/plan-shop';

const draws = statedDraws({
  drawCount: 2,
  tools: { DIE: [100, 300], D2: [50, 50], BLADE: 1e6 },
  parts: { 'part-die': [40, 60] },
  factors: { M: [1, 2] },
});

function ready(lines: PlanLine[], expectedOnDay: string) {
  const queue = queueLines(lines, [{ connectionId: 'S', hand: 'LH' }], TODAY);
  const items = [...completeSet(), setItem('die', { toolId: 'D2' })];
  const context = { today: TODAY, lineDueOnDay: new Map<string, string>() };
  const find = indexCandidates(listCandidates(items, [arrival('die', { expectedOnDay })], context));
  return { queue, statuses: queue.map((queued) => needStatuses(queued, find)) };
}

// source: hand. Draw 1: 150 turns at factor 1; draw 2: 350 turns at factor 2. Ten turns an end.
describe('walkEdge', () => {
  const two = [
    planLine({ lineId: 'A' }),
    planLine({ lineId: 'B', startOnDay: '2026-03-14', dueOnDay: '2026-03-16' }),
  ];

  it('spends lives along the queue in every draw, one die after the other', () => {
    const { queue, statuses } = ready(two, '2026-04-30');
    const told = walkEdge('die', queue, statuses, [true, true], draws, TODAY);
    expect(told.map((outlook) => [...(outlook?.ends ?? [])])).toEqual([
      [15, 17],
      [5, 7],
    ]);
  });

  it('a stopped line takes nothing', () => {
    const { queue, statuses } = ready(two, '2026-04-30');
    const told = walkEdge('die', queue, statuses, [false, true], draws, TODAY);
    expect(told.map((outlook) => [...(outlook?.ends ?? [])])).toEqual([
      [15, 17],
      [15, 17],
    ]);
  });

  it('tells what waiting would bring: 40 and 60 turns more', () => {
    const { queue, statuses } = ready([planLine({ endsToMake: 18 })], '2026-03-13');
    const [outlook] = walkEdge('die', queue, statuses, [true], draws, TODAY);
    expect(outlook?.waiting?.inDays).toEqual([11]);
    expect([...(outlook?.waiting?.endsBy(11) ?? [])]).toEqual([19, 20]);
    expect([...(outlook?.waiting?.endsBy(10) ?? [])]).toEqual([15, 17]);
  });

  it('has no outlook without the operation, the table row or the factor', () => {
    const { queue, statuses } = ready([planLine({ operations: ['cone'] })], '2026-04-30');
    expect(walkEdge('die', queue, statuses, [true], draws, TODAY)).toEqual([undefined]);
    const other = ready([planLine({ materialId: 'X' })], '2026-04-30');
    expect(walkEdge('die', other.queue, other.statuses, [true], draws, TODAY)).toEqual([undefined]);
  });

  it('throws when a known size has no exposure: no figure is invented', () => {
    const { queue, statuses } = ready([planLine({ exposurePerEnd: { cone: 1 } })], '2026-04-30');
    expect(() => walkEdge('die', queue, statuses, [true], draws, TODAY)).toThrow('exposure per end');
  });
});

// source: hand. Two dies in the crib pool together; the one on order apart, from its day.
it('poolLives adds up like pieces and sets apart what comes later', () => {
  const { queue, statuses } = ready(
    [planLine({ lineId: 'A' }), planLine({ lineId: 'B', dueOnDay: '2026-03-20' })],
    '2026-03-15',
  );
  const mine = statuses.map((list) => list.find(({ need }) => need.role === 'die'));
  const pools = poolLives(queue, mine, draws, TODAY).map(({ reach, supply, lateInDays }) => [
    [...reach],
    [...supply],
    [...lateInDays],
  ]);
  expect(pools).toEqual([
    [[0, 1], [150, 350], []],
    [[1], [40, 60], [[0, 13]]],
  ]);
});
