import { describe, expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { buyWay, buyWays } from '@/lib/what-if/ways/buy-way';
import { pricedWays, rolesInTheWay } from '@/lib/what-if/ways/priced-ways';
import { whatIf } from '@/lib/what-if/what-if';
import { lineFacts } from '../../../support/shop-record';
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

  // source: hand. Sold from three on in packs of two: four at 4,000 instead of 5,000, and placing one order at 2,500: 18,500.
  it('buys as it is sold, at the price of that many', () => {
    const sold = { packSize: 2, minQuantity: 3, priceMinor: 5_000, breakKind: 'all-units' as const };
    const priceBreaks = [{ fromQuantity: 4, priceMinor: 4_000 }];
    const parts = whatIfFacts().parts.map((part) =>
      part.role === 'go-ring' ? { ...part, ...sold, priceBreaks } : part,
    );
    const asked = question({ tools: without('GO-RING-1'), parts }, { ends: 4, ...FAR });
    const way = buyWay(asked, ['go-ring']);
    expect(way).toMatchObject({ verdict: 'can-make', costMinor: 18_500, actions: [{ quantity: 4 }] });
  });

  // source: hand. Nothing of the kind stands in the list: no price and no day is made up.
  it('names what the list of parts does not hold', () => {
    const parts = whatIfFacts().parts.filter(({ role }) => role !== 'go-ring');
    const asked = question({ tools: without('GO-RING-1'), parts });
    const way = buyWay(asked, ['go-ring']);
    expect(way).toMatchObject({ costMinor: null, actions: [{ kind: 'find-part', role: 'go-ring' }] });
    expect(way?.verdict).toBe('cannot-make-now');
  });

  // source: hand. A ring from Ninefold takes 20 days at 5,000, from Sevenfold 5 days at 9,000; each order costs 2,500.
  const offers = [
    { supplier: 'Sevenfold', priceMinor: 9_000, leadTimeDays: 5, breakKind: 'all-units' as const },
  ].map((offer) => ({ ...offer, packSize: 1, minQuantity: 1, priceBreaks: [] }));
  const twoOffers = whatIfFacts().parts.map((part) => (part.role === 'go-ring' ? { ...part, offers } : part));
  const from = (way: ReturnType<typeof buyWay>) =>
    way?.actions.flatMap((action) => (action.kind === 'order' ? [action.offer.supplier] : []));

  it('takes the cheapest offer that is in time, and that alone', () => {
    const asked = question({ tools: without('GO-RING-1'), parts: twoOffers }, { ends: 4, ...FAR });
    const ways = buyWays(asked, ['go-ring']);
    expect(ways.map((way) => [from(way), way.costMinor])).toEqual([[['Ninefold'], 7_500]]);
  });

  it('takes the soonest where none is in time, with the cheaper later one beside it', () => {
    const asked = question({ tools: without('GO-RING-1'), parts: twoOffers }, { ends: 4 });
    const ways = buyWays(asked, ['go-ring']);
    expect(ways.map((way) => [from(way), way.costMinor])).toEqual([
      [['Sevenfold'], 11_500],
      [['Ninefold'], 7_500],
    ]);
    const [first, second] = ways.map(({ changes }) => changes.at(-1));
    if (first?.kind !== 'change-dates' || second?.kind !== 'change-dates') throw new Error('both come late');
    expect(first.startOnDay < second.startOnDay).toBe(true);
  });

  // source: identity. What is ordered today is not here today: a line that starts tomorrow gets nothing of it.
  it('helps no other line before it is there', () => {
    const tomorrow = addDays('2026-03-02', 1);
    const other = lineFacts({ id: 'J-9.1', jobId: 'J-9', ends: 4, startOnDay: tomorrow, dueOnDay: tomorrow });
    const asked = question({ tools: without('GO-RING-1') }, { ends: 4, ...FAR });
    const facts = { ...asked.facts, lines: [...asked.facts.lines, other] };
    const way = buyWay({ ...asked, facts }, ['go-ring']);
    const after = whatIf({ facts, ensemble: asked.ensemble }, way?.changes ?? []);
    if (!after.ok) throw new Error(after.refusal.sentence);
    const verdicts = after.value.lines.map(({ lineId, verdict }) => [lineId, verdict]);
    expect(new Map(verdicts as [string, string][])).toEqual(
      new Map([
        ['J-9.1', 'cannot-make-now'],
        [asked.line.id, 'can-make'],
      ]),
    );
  });

  // source: hand. Nobody knows when a ring without a lead time comes: it is named, priced, and not counted on.
  it('does not count on what has no lead time', () => {
    const parts = whatIfFacts().parts.map((part) => ({ ...part, leadTimeDays: null }));
    const way = buyWay(question({ tools: without('GO-RING-1'), parts }, { ends: 4, ...FAR }), ['go-ring']);
    expect(way).toMatchObject({ verdict: 'cannot-make-now', costMinor: 7_500, changes: [] });
  });
});
