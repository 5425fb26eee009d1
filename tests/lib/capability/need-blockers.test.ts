import { describe, expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import type { ClaimRefusal } from '@/lib/capability/claim-items';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import type { FluidShare } from '@/lib/capability/fluid-share';
import { queueLines } from '@/lib/capability/line-order';
import { needBlockers } from '@/lib/capability/need-blockers';
import { needStatuses } from '@/lib/capability/need-status';
import type { SetItem } from '@/lib/capability/plan-input';
import type { Role } from '@/lib/shop/vocabulary';
import { arrival, completeSet, planLine, setItem, TODAY } from '../../support/plan-shop';

function blockers(
  role: Role,
  items: SetItem[],
  {
    refused = null,
    fluid,
    arrivals = [],
  }: { refused?: ClaimRefusal | null; fluid?: FluidShare; arrivals?: ReturnType<typeof arrival>[] } = {},
) {
  const [queued] = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  if (queued === undefined) throw new Error('one line was queued');
  const find = indexCandidates(listCandidates(items, arrivals, { today: TODAY, lineDueOnDay: new Map() }));
  const status = needStatuses(queued, find).find(({ need }) => need.role === role);
  if (status === undefined) throw new Error('the line needs the role');
  return needBlockers(status, refused, fluid);
}

// source: hand.
describe('needBlockers', () => {
  it('none for a need that is met', () => {
    expect(blockers('die', completeSet())).toEqual([]);
  });

  it('one for each way in which the tools fail, all with the day on which the need clears', () => {
    const items = [
      setItem('die', { toolId: 'A', state: 'quarantined' }),
      setItem('die', { toolId: 'B', hand: 'RH' }),
      setItem('die', { toolId: 'C', hand: 'RH' }),
    ];
    expect(blockers('die', items, { arrivals: [arrival('die')] })).toMatchObject([
      { kind: 'quarantined', toolIds: ['A'], clearsOnDay: '2026-03-20' },
      { kind: 'hand-mismatch', toolIds: ['B', 'C'], clearsOnDay: '2026-03-20' },
    ]);
  });

  it('of tools that fail alike, the nearest to use speaks', () => {
    const back = (toolId: string, backOnDay: string | null) =>
      setItem('blade', { toolId, state: 'regrind', backOnDay });
    const blades = [back('A', null), back('B', '2026-03-18'), back('C', '2026-03-16')];
    expect(blockers('blade', blades)).toMatchObject([{ backOnDay: '2026-03-16', toolIds: ['A', 'B', 'C'] }]);
    const due = (toolId: string, dueOnDay: string) => setItem('go-ring', { toolId, dueOnDay });
    const rings = [due('A', '2026-03-05'), due('B', '2026-03-11')];
    expect(blockers('go-ring', rings)).toMatchObject([{ dueOnDay: '2026-03-11', clearsOnDay: null }]);
    const expiring = (toolId: string, expiresOnDay: string) => setItem('fluid', { toolId, expiresOnDay });
    const lots = [expiring('A', '2026-02-01'), expiring('B', '2026-03-12')];
    expect(blockers('fluid', lots)).toMatchObject([{ kind: 'fluid-expired', expiresOnDay: '2026-03-12' }]);
    const away = (toolId: string, backOnDay: string) =>
      setItem('go-ring', { toolId, state: 'calibration', backOnDay });
    expect(blockers('go-ring', [away('A', '2026-03-30'), away('B', '2026-03-12')])).toMatchObject([
      { backOnDay: '2026-03-12' },
    ]);
    const lent = (toolId: string, backOnDay: string) =>
      setItem('collet', { toolId, state: 'issued', backOnDay });
    expect(blockers('collet', [lent('A', '2026-03-30'), lent('B', '2026-03-12')])).toMatchObject([
      { untilDay: '2026-03-11' },
    ]);
  });

  it('what lines before it hold clears when they are done, or when another comes first', () => {
    const refused = {
      heldByLineId: 'L0',
      untilDay: '2026-03-24',
      clearsOnDay: '2026-03-25',
      toolIds: ['DIE'],
    };
    expect(blockers('die', completeSet(), { refused })).toMatchObject([
      {
        kind: 'held-elsewhere',
        lineId: 'L0',
        untilDay: '2026-03-24',
        clearsOnDay: '2026-03-25',
        toolIds: ['DIE'],
      },
    ]);
    const [sooner] = blockers('die', completeSet(), { refused, arrivals: [arrival('die')] });
    expect(sooner?.clearsOnDay).toBe('2026-03-20');
  });

  it('fluid that does not go round', () => {
    const fluid = { haveMl: 3, needMl: 10, enoughFromDay: '2026-03-20' };
    expect(blockers('fluid', completeSet(), { fluid })).toMatchObject([
      { kind: 'fluid-short', haveMl: 3, needMl: 10, clearsOnDay: '2026-03-20', toolIds: ['FLUID'] },
    ]);
  });
});
