import { describe, expect, it } from 'vitest';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import { weekGrid } from '@/lib/capability/week-grid';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, plan, planLine, setWith } from '../../support/plan-shop';

const SIZE = {
  connectionId: 'S',
  hand: 'LH',
  exposurePerEnd: { cone: 100, thread: 10 },
  fluidMlPerEnd: 1,
} as const;

/** A die of 150 turns, five more weeks; 2 March 2026 is a Monday. */
function cells(change: Partial<PlanInput> = {}) {
  const draws = statedDraws({
    drawCount: 4,
    tools: { DIE: 150, BLADE: 1e7 },
    parts: { 'part-die': 80 },
    factors: { M: 1 },
  });
  const input = { ...plan({ draws, ...change }), sizes: [SIZE], materialId: 'M', weekCount: 5 };
  return weekGrid(input)[0]?.cells ?? [];
}

const row = (change: Partial<PlanInput> = {}) =>
  cells(change).map(({ verdict, likelyEnds }) => [verdict, likelyEnds]);

// source: hand. 150 turns are 15 ends; the plan's ten are taken off every week, before or after.
describe('weekGrid', () => {
  it('asks behind the plan: what is left once its lines are served, and says where they run', () => {
    expect(row({ lines: [] })).toEqual(Array(5).fill(['can-make', 15]));
    const busy = cells();
    expect(busy.map(({ likelyEnds }) => likelyEnds)).toEqual([5, 5, 5, 5, 5]);
    expect(busy.map(({ lineIds }) => lineIds.length)).toEqual([0, 1, 0, 0, 0]);
    expect(busy.map(({ weekStartOnDay }) => weekStartOnDay)[1]).toBe('2026-03-09');
  });

  it('the week in which the set is out with a line says so; a line of two days leaves the rest of the week', () => {
    expect(cells()[1]?.blockers[0]?.kind).toBe('held-elsewhere');
    const short = planLine({ startOnDay: '2026-03-09', dueOnDay: '2026-03-10' });
    expect(cells({ lines: [short] })[1]?.verdict).toBe('can-make');
  });

  it('shows the week in which an order comes, and the week in which a gauge runs out', () => {
    const coming = cells({ lines: [], arrivals: [arrival('die', { arrivalDayDraws: [8, 8, 8, 15] })] });
    expect(coming.map(({ likelyEnds }) => likelyEnds)).toEqual([15, 23, 23, 23, 23]);
    expect(coming.map(({ safeEnds }) => safeEnds)).toEqual([15, 15, 23, 23, 23]);
    const lapsing = cells({ lines: [], items: setWith('go-ring', { dueOnDay: '2026-03-17' }) });
    expect(lapsing.map(({ verdict, canCut }) => [verdict, canCut])).toEqual([
      ['can-make', true],
      ['can-make', true],
      ['can-make', true],
      ['cannot-make-now', true],
      ['cannot-make-now', true],
    ]);
  });

  // source: identity. A question takes nothing and holds nothing.
  it('asking changes no verdict of the plan', () => {
    const input = plan({ items: completeSet() });
    const asked = {
      ...input,
      lines: [
        ...input.lines,
        planLine({ lineId: 'ASK', endsToMake: 500, asksOnly: true, startOnDay: '2026-03-02' }),
      ],
    };
    expect(checkPlan(asked).filter(({ lineId }) => lineId !== 'ASK')).toEqual(checkPlan(input));
  });
});
