import { describe, expect, it } from 'vitest';
import { listCandidates } from '@/lib/capability/candidates';
import { indexCandidates } from '@/lib/capability/fitting-candidates';
import { queueLines } from '@/lib/capability/line-order';
import { isStopped, needStatuses } from '@/lib/capability/need-status';
import type { Arrival, SetItem } from '@/lib/capability/plan-input';
import { arrival, completeSet, planLine, setItem, setWith, TODAY } from '../../support/plan-shop';

function statuses(items: SetItem[], arrivals: Arrival[] = []) {
  const [queued] = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  if (queued === undefined) throw new Error('one line was queued');
  const context = { today: TODAY, lineDueOnDay: new Map<string, string>() };
  return needStatuses(queued, indexCandidates(listCandidates(items, arrivals, context)));
}

function of(role: string, list: ReturnType<typeof statuses>) {
  return list.find(({ need }) => need.role === role);
}

// source: hand. The line starts on 9 March.
describe('needStatuses', () => {
  it('a need that is met clears at the start', () => {
    expect(of('die', statuses(completeSet()))).toMatchObject({
      usable: [{ id: 'DIE' }],
      clearsOnDay: '2026-03-09',
    });
  });

  it('else at the soonest return or arrival, else on no known day', () => {
    const away = setWith('blade', { state: 'regrind', backOnDay: '2026-03-25' });
    expect(of('blade', statuses(away))?.clearsOnDay).toBe('2026-03-25');
    expect(of('blade', statuses(away, [arrival('blade')]))?.clearsOnDay).toBe('2026-03-20');
    expect(of('blade', statuses(setWith('blade', { state: 'quarantined' })))?.clearsOnDay).toBeNull();
  });
});

// source: hand.
it('isStopped: cutting has no date; a gauge without one stops only the acceptance', () => {
  expect(isStopped(statuses(completeSet()))).toBe(false);
  expect(isStopped(statuses(setWith('die', null)))).toBe(true);
  expect(isStopped(statuses(setWith('die', null), [arrival('die')]))).toBe(false);
  expect(isStopped(statuses(setWith('go-ring', null)))).toBe(false);
  expect(
    isStopped(statuses([...setWith('die', { state: 'quarantined' }), setItem('die', { toolId: 'D2' })])),
  ).toBe(false);
});
