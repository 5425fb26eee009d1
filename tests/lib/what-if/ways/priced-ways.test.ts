import { describe, expect, it } from 'vitest';
import { pricedWays } from '@/lib/what-if/ways/priced-ways';
import { changed, FAR, question, without } from '../../../support/way-question';
import { whatIfFacts } from '../../../support/what-if-shop';

describe('ways out, priced', () => {
  it('has none for a line that can be made', () => {
    expect(pricedWays(question({ edges: [] }, { ends: 0 }))).toEqual([]);
  });

  // source: hand. Free and on its own dates first, then by price, then what waits.
  it('puts the cheapest that keeps the dates on top', () => {
    const asked = question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2, ...FAR });
    const made = pricedWays(asked).filter(({ verdict }) => verdict === 'can-make');
    const costs = made.flatMap(({ costMinor }) => costMinor ?? []);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(made[0]?.actions[0]?.kind).toBe('free');
  });
});

describe('a second offer', () => {
  const offers = [{ supplier: 'Sevenfold', priceMinor: 9_000, leadTimeDays: 5 }].map((offer) => ({
    ...{ ...offer, packSize: 1, minQuantity: 1, breakKind: 'all-units' as const, priceBreaks: [] },
  }));
  const partsOf = (role: string) =>
    whatIfFacts().parts.map((part) => (part.role === role ? { ...part, offers } : part));
  const suppliers = (asked: ReturnType<typeof question>) =>
    pricedWays(asked).flatMap(({ actions }) =>
      actions.flatMap((action) => (action.kind === 'order' ? [action.offer.supplier] : [])),
    );

  // source: hand. No ring is on its way: the quick one costs more, the slow one keeps the line waiting. Each is worth showing.
  it('stands beside the first where it buys something', () => {
    const asked = question({ tools: without('GO-RING-1'), parts: partsOf('go-ring') }, { ends: 4 });
    expect(suppliers(asked).sort()).toEqual(['Ninefold', 'Sevenfold']);
  });

  // source: hand. A die is on its way for 20 March: waiting for it is free, and sooner than the slow offer.
  it('is left out where waiting for an order is as good, for nothing', () => {
    const asked = question({ tools: without('DIE-1'), parts: partsOf('die') }, { ends: 2 });
    expect(suppliers(asked)).toEqual(['Sevenfold']);
  });
});
