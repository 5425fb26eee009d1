import { describe, expect, it } from 'vitest';
import { daysBetween } from '@/lib/calendar/day';
import { offersOf } from '@/lib/orders/part-offers';
import { offerDays, orderFor } from '@/lib/what-if/ways/order-offers';
import { FAR, question, without } from '../../../support/way-question';
import { whatIfFacts } from '../../../support/what-if-shop';

/** The ring at 5,000 in 20 days from Ninefold; and from others as stated. */
function ringFrom(...more: [supplier: string, priceMinor: number | null, leadTimeDays: number | null][]) {
  const offers = more.map(([supplier, priceMinor, leadTimeDays]) => ({
    ...{ supplier, priceMinor, leadTimeDays, packSize: 1, minQuantity: 1 },
    ...{ breakKind: 'all-units' as const, priceBreaks: [] },
  }));
  return whatIfFacts().parts.map((part) => (part.role === 'go-ring' ? { ...part, offers } : part));
}

function supplierFor(parts: ReturnType<typeof ringFrom>, by: Parameters<typeof orderFor>[2], far = true) {
  const asked = question({ tools: without('GO-RING-1'), parts }, { ends: 4, ...(far ? FAR : {}) });
  const order = orderFor(asked, 'go-ring', by);
  return order.kind === 'order' ? order.offer.supplier : order.kind;
}

describe('the offer that is chosen', () => {
  // source: identity. Ordered on the order-by day instead of today, it comes as many days later: on the start day.
  it('says by when to order: as long before the start as it takes to come, as surely as the line asks', () => {
    const order = orderFor(question({ tools: without('GO-RING-1') }, { ends: 4, ...FAR }), 'go-ring');
    if (order.kind !== 'order' || order.thereOnDay === null || order.orderByDay === null)
      throw new Error('a ring stands in the list, with its lead time');
    const takes = daysBetween('2026-03-02', order.thereOnDay);
    expect(takes).toBeGreaterThan(20);
    expect(daysBetween(order.orderByDay, FAR.startOnDay)).toBe(takes);
  });

  // source: hand. Far ahead all are in time: the cheapest. Next week only the soonest is any nearer.
  it('is the cheapest in time, else the soonest; by price or by day where that is asked', () => {
    const parts = ringFrom(['Sevenfold', 9_000, 5], ['Eightfold', 4_000, 60]);
    expect(supplierFor(parts, 'in-time')).toBe('Eightfold');
    expect(supplierFor(parts, 'in-time', false)).toBe('Sevenfold');
    expect(supplierFor(parts, 'price', false)).toBe('Eightfold');
    expect(supplierFor(parts, 'day')).toBe('Sevenfold');
  });

  it('puts what has no price or no lead time last', () => {
    const parts = ringFrom(['Sevenfold', null, 5], ['Eightfold', 4_000, null]);
    expect(supplierFor(parts, 'in-time')).toBe('Ninefold');
    expect(supplierFor(parts, 'day')).toBe('Sevenfold');
  });

  // source: hand. No lead time, no days.
  it('draws days only where a lead time stands', () => {
    const asked = question({});
    const [part] = asked.facts.parts;
    const [offer] = part === undefined ? [] : offersOf(part);
    if (part === undefined || offer === undefined) throw new Error('the shop has parts');
    expect(offerDays(asked, part, offer)).toHaveLength(asked.ensemble.drawCount);
    expect(offerDays(asked, part, { ...offer, leadTimeDays: null })).toBeUndefined();
  });
});
