import { describe, expect, it } from 'vitest';
import { buyWay, orderFor } from '@/lib/what-if/ways/buy-way';
import { pricedWays, rolesInTheWay } from '@/lib/what-if/ways/priced-ways';
import { FAR, question, without } from '../../../support/way-question';
import { whatIfFacts } from '../../../support/what-if-shop';

describe('buying what is in the way', () => {
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
});
