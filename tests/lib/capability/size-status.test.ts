import { describe, expect, it } from 'vitest';
import { type SizeInput, sizeStatuses } from '@/lib/capability/size-status';
import { statedDraws } from '../../support/life-draws';
import { completeSet, planLine, setWith, TODAY } from '../../support/plan-shop';

function sizes(change: Partial<SizeInput> = {}) {
  const probe = (connectionId: string) => ({
    connectionId,
    hand: 'LH' as const,
    exposurePerEnd: { cone: 100, thread: 10 },
    fluidMlPerEnd: 1,
  });
  return sizeStatuses({
    today: TODAY,
    connections: [probe('S'), probe('T')],
    materialId: 'M',
    items: completeSet(),
    arrivals: [],
    draws: statedDraws({ drawCount: 10, tools: { DIE: [100, 200], BLADE: 1e6 }, factors: { M: 1 } }),
    ...change,
  });
}

// source: hand. A die with 100 or 200 turns at ten an end: ten ends safe, twenty likely.
describe('sizeStatuses', () => {
  it('says for every size kept whether one end can be made today, and how many are in its edges', () => {
    const [s, t] = sizes();
    expect(s).toMatchObject({
      connectionId: 'S',
      verdict: 'can-make',
      safeEnds: 10,
      likelyEnds: 20,
      blockers: [],
    });
    expect(t).toMatchObject({ connectionId: 'T', verdict: 'cannot-make-now', safeEnds: 0 });
    expect(t?.blockers[0]).toMatchObject({ kind: 'missing', role: 'die' });
  });

  it('asks each size on its own: a shared body serves both', () => {
    const shared = completeSet().map((item) => ({ ...item, fitsConnectionIds: ['S', 'T'] }));
    expect(sizes({ items: shared }).map(({ verdict }) => verdict)).toEqual(['can-make', 'can-make']);
  });

  it('what is out on a line is out, until the day after that line is due', () => {
    const items = setWith('coning-body', { state: 'issued', heldForLineId: 'L1' });
    const [known] = sizes({ items, lines: [planLine()] });
    expect(known).toMatchObject({ verdict: 'cannot-make-now', clearsOnDay: '2026-03-14' });
    expect(known?.blockers).toMatchObject([{ kind: 'held-elsewhere', lineId: 'L1', untilDay: '2026-03-13' }]);
    expect(sizes({ items })[0]?.clearsOnDay).toBeNull();
  });
});
