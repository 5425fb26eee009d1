import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import { pressesNow } from '@/lib/outlook/presses-now';
import { blocker, lineFacts, setParts, shopRecord, TODAY } from '../../support/shop-record';

const noDie = blocker({ kind: 'missing', role: 'die' });
const parts = (leadTimeDays: number | null, offered: number | null = null) =>
  setParts().map((part) =>
    part.role === 'die'
      ? {
          ...part,
          leadTimeDays,
          offers: [
            { supplier: 'B', priceMinor: null, leadTimeDays: offered, packSize: 1, minQuantity: 1 },
          ].map((offer) => ({ ...offer, breakKind: 'all-units' as const, priceBreaks: [] })),
        }
      : part,
  );

/** The furthest start, in days from today, at which the line still presses. */
function reach(facts: Parameters<typeof pressesNow>[2], blockers = [noDie]): number {
  const at = (days: number) => lineFacts({ startOnDay: addDays(TODAY, days), dueOnDay: addDays(TODAY, 99) });
  const presses = Array.from({ length: 90 }, (_, days) => pressesNow(at(days), { blockers }, facts));
  const last = presses.lastIndexOf(true);
  // source: formula. start − today ≤ max(7, lead): once it presses, every nearer start presses too.
  expect(presses).toEqual(presses.map((_, days) => days <= last));
  return last;
}

// source: hand. The last day to order is the start less the lead time; the quickest supplier counts, the slowest need decides.
it('presses from the last day on which an order still comes in time', () => {
  expect(reach(shopRecord({ parts: parts(28) }))).toBe(28);
  expect(reach(shopRecord({ parts: parts(28, 12) }))).toBe(12);
  expect(reach(shopRecord({ parts: parts(28, 40) }))).toBe(28);
  const slowRing = setParts().map((part) => (part.role === 'go-ring' ? { ...part, leadTimeDays: 40 } : part));
  const noRing = blocker({ kind: 'missing', role: 'go-ring', phase: 'accept' });
  expect(reach(shopRecord({ parts: slowRing }), [noDie, noRing])).toBe(40);
});

// source: hand. A week is the least; what clears by itself before the start asks for no order; two weeks where no time is known.
it('presses within the week whatever it lacks, and reckons two weeks where nobody wrote the time down', () => {
  expect(reach(shopRecord({ parts: parts(3) }))).toBe(7);
  expect(reach(shopRecord({ parts: parts(null) }))).toBe(14);
  expect(reach(shopRecord({ parts: [] }))).toBe(14);
  expect(reach(shopRecord({ connections: [] }), [blocker({ kind: 'unknown-connection', role: null })])).toBe(
    14,
  );
  const back = blocker({ kind: 'out-for-regrind', backOnDay: TODAY, clearsOnDay: TODAY });
  expect(reach(shopRecord({ parts: parts(28) }), [back])).toBe(7);
});
