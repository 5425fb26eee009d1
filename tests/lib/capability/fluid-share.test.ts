import { describe, expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { isFluidEnough, shareFluid } from '@/lib/capability/fluid-share';
import { queueLines } from '@/lib/capability/line-order';
import { needStatuses } from '@/lib/capability/need-status';
import type { Arrival, SetItem } from '@/lib/capability/plan-input';
import { arrival, planLine, setItem, TODAY } from '../../support/plan-shop';

function shares(items: SetItem[], arrivals: Arrival[] = [], goes = true) {
  const lines = [
    planLine({ lineId: 'steel' }),
    planLine({ lineId: 'titanium', materialId: 'Ti', startOnDay: '2026-03-16', dueOnDay: '2026-03-20' }),
  ];
  const queue = queueLines(lines, [], TODAY);
  const find = indexCandidates(listCandidates(items, arrivals, { today: TODAY, lineDueOnDay: new Map() }));
  return shareFluid(
    queue,
    queue.map((queued) => needStatuses(queued, find)),
    [goes, true],
  );
}

const lot = (toolId: string, levelMl: number, change: object = {}) =>
  setItem('fluid', { toolId, levelMl, ...change });

// source: hand. Two lines of ten ends at 1 mL, steel first.
describe('shareFluid', () => {
  it('keeps what only titanium may use for titanium', () => {
    expect(shares([lot('A', 10), lot('B', 10, { permittedMaterialIds: ['M'] })])).toMatchObject([
      { haveMl: 20, needMl: 10 },
      { haveMl: 10, needMl: 10 },
    ]);
  });

  it('does not count what expires before the line is done', () => {
    const two = [lot('A', 10, { expiresOnDay: '2026-03-15' }), lot('B', 4)];
    expect(shares(two).map((share) => share?.haveMl)).toEqual([14, 4]);
  });

  it('a stopped line leaves the fluid to the next', () => {
    expect(shares([lot('A', 12)], [], false).map((share) => share?.haveMl)).toEqual([12, 12]);
  });

  it('says from which day an order makes it up, counting cans', () => {
    const cans = (quantity: number) =>
      arrival('fluid', { quantity, levelMl: 4, permittedMaterialIds: 'all', expectedOnDay: '2026-03-20' });
    expect(shares([lot('A', 12)], [cans(2)])[1]).toEqual({
      haveMl: 2,
      needMl: 10,
      enoughFromDay: '2026-03-20',
    });
    expect(shares([lot('A', 12)], [cans(1)])[1]?.enoughFromDay).toBeNull();
  });
});

// source: hand.
it('isFluidEnough: half a drop either way does not matter, an empty bottle does', () => {
  expect(isFluidEnough({ haveMl: 9.995, needMl: 10 })).toBe(true);
  expect(isFluidEnough({ haveMl: 9.9, needMl: 10 })).toBe(false);
  expect(isFluidEnough({ haveMl: 0, needMl: 0 })).toBe(false);
});
