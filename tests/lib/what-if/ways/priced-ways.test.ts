import { describe, expect, it } from 'vitest';
import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { askLine, pricedWay, type WayQuestion } from '@/lib/what-if/ways/ask-way';
import { buyWay, orderFor } from '@/lib/what-if/ways/buy-way';
import { datesFrom, laterStartWay, splitWay } from '@/lib/what-if/ways/date-ways';
import { mendWay, regrindWay } from '@/lib/what-if/ways/mend-ways';
import { pricedWays, rolesInTheWay } from '@/lib/what-if/ways/priced-ways';
import { lineFacts } from '../../../support/shop-record';
import { outlookOf, whatIfFacts } from '../../../support/what-if-shop';

function question(change: Partial<ShopFacts>, line: Partial<LineFacts> = {}): WayQuestion {
  const facts = whatIfFacts({ costs: DEFAULT_COSTS, lines: [lineFacts(line)], ...change });
  const outlook = outlookOf(facts);
  const [verdict] = outlook.lines;
  const [first] = facts.lines;
  if (verdict === undefined || first === undefined) throw new Error('one line was asked');
  return { facts, ensemble: outlook.ensemble, line: first, verdict };
}

const without = (id: string) => whatIfFacts().tools.filter((tool) => tool.id !== id);
const changed = (id: string, change: object) =>
  whatIfFacts().tools.map((tool) => (tool.id === id ? { ...tool, ...change } : tool));
const FAR = { startOnDay: '2026-06-01', dueOnDay: '2026-06-05' };

describe('ways out, priced', () => {
  it('has none for a line that can be made', () => {
    expect(pricedWays(question({ edges: [] }, { ends: 0 }))).toEqual([]);
  });

  // source: hand. One ring at 5,000, and placing one order at 2,500: 7,500.
  it('buys the missing ring in time, at its price and that of the order', () => {
    const asked = question({ tools: without('GO-RING-1') }, { ends: 4, ...FAR });
    expect(rolesInTheWay(asked)).toEqual(['go-ring']);
    const way = buyWay(asked, rolesInTheWay(asked));
    expect(way).toMatchObject({ verdict: 'can-make', costMinor: 7_500 });
    expect(way?.changes.some(({ kind }) => kind === 'change-dates')).toBe(false);
    expect(pricedWays(asked)[0]?.actions[0]?.kind).toBe('order');
  });

  // source: identity. Ordered on the order-by day instead of today, it comes as many days later: on the start day.
  it('says by when to order: as long before the start as it takes to come, as surely as the line asks', () => {
    const order = orderFor(question({ tools: without('GO-RING-1') }, { ends: 4, ...FAR }), 'go-ring');
    if (order.kind !== 'order') throw new Error('a ring stands in the list');
    const ms = (day: string | null) => Date.parse(`${day}T00:00:00Z`);
    const takes = (ms(order.thereOnDay) - ms('2026-03-02')) / 86_400_000;
    expect(takes).toBeGreaterThan(20);
    expect((ms('2026-06-01') - ms(order.orderByDay)) / 86_400_000).toBe(takes);
  });

  // source: hand. Nothing of the kind stands in the list: no price and no day is made up.
  it('names what the list of parts does not hold', () => {
    const parts = whatIfFacts().parts.filter(({ role }) => role !== 'go-ring');
    const asked = question({ tools: without('GO-RING-1'), parts });
    const way = buyWay(asked, ['go-ring']);
    expect(way).toMatchObject({ costMinor: null, actions: [{ kind: 'find-part', role: 'go-ring' }] });
    expect(way?.verdict).toBe('cannot-make-now');
  });

  // source: hand. A ring that lapses in mid-line is calibrated; what that costs is not written down.
  it('calibrates a gauge that lapses, and gauges a first-off for nothing', () => {
    const lapsing = question({ tools: changed('GO-RING-1', { dueOnDay: '2026-03-10' }) }, { ends: 4 });
    expect(mendWay(lapsing)).toMatchObject({
      verdict: 'can-make',
      costMinor: null,
      actions: [{ kind: 'calibrate', toolId: 'GO-RING-1' }],
    });
    const owed = question({ tools: changed('BLADE-1', { firstOffOwed: true }) }, { ends: 4 });
    expect(mendWay(owed)).toMatchObject({ verdict: 'can-make', costMinor: 0 });
    expect(pricedWays(owed)[0]?.actions).toEqual([{ kind: 'free', toolId: 'BLADE-1' }]);
  });

  // source: identity. One day earlier the line cannot be made; on the day named it can.
  it('finds the earliest later start: not a day sooner', () => {
    const asked = question({ tools: without('DIE-1') }, { ends: 2 });
    expect(asked.verdict.verdict).toBe('cannot-make-now');
    const way = laterStartWay(asked);
    const [action] = way?.actions ?? [];
    if (action?.kind !== 'start') throw new Error('the die on order comes');
    expect(way?.verdict).toBe('can-make');
    const dayBefore = new Date(Date.parse(`${action.startOnDay}T00:00:00Z`) - 86_400_000)
      .toISOString()
      .slice(0, 10);
    expect(askLine(asked, [datesFrom(asked, dayBefore)])?.verdict).not.toBe('can-make');
  });

  // source: identity. Safe ends are those that are made with the required probability.
  it('splits a line that only life is short for', () => {
    const asked = question({ orders: [] }, { ends: 120 });
    const way = splitWay(asked);
    const safe = asked.verdict.safeEnds ?? 0;
    expect(safe).toBeGreaterThan(0);
    expect(way?.actions).toEqual([{ kind: 'split', endsNow: safe, endsLater: 120 - safe }]);
    expect(way?.verdict).toBe('can-make');
    expect(splitWay(question({ tools: without('GO-RING-1') }, { ends: 120 }))).toBeUndefined();
  });

  // source: hand. A blade quarantined is what is in the way; reground it is back in 14 + 1 days, for 2,000.
  it('regrinds a blade, later where it is not back in time', () => {
    const asked = question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2, ...FAR });
    expect(regrindWay(asked)).toMatchObject({
      verdict: 'can-make',
      costMinor: 2_000,
      actions: [{ kind: 'regrind', toolId: 'BLADE-1', backOnDay: '2026-03-17' }],
    });
    const soon = regrindWay(question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2 }));
    expect(soon?.changes.at(-1)).toMatchObject({ kind: 'change-dates', startOnDay: '2026-03-17' });
  });

  // source: hand. Free and on its own dates first, then by price, then what waits.
  it('puts the cheapest that keeps the dates on top', () => {
    const asked = question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2, ...FAR });
    const made = pricedWays(asked).filter(({ verdict }) => verdict === 'can-make');
    const costs = made.flatMap(({ costMinor }) => costMinor ?? []);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(made[0]?.actions[0]?.kind).toBe('free');
  });

  // source: identity. A change that cannot be is no way.
  it('offers nothing that cannot be tried', () => {
    const asked = question({});
    const changes = [{ kind: 'lose-tool', toolId: 'NO-SUCH' } as const];
    expect(pricedWay(asked, { actions: [], changes, costMinor: 0 })).toBeUndefined();
  });
});
