import { expect, it } from 'vitest';
import { missingParts } from '@/lib/orders/missing-parts';
import { computeOutlook } from '@/lib/outlook/outlook';
import { lineFacts, shopRecord } from '../../support/shop-record';

// source: hand. An empty crib: every lasting item of the set is missing, once each however many lines need it; edges and
// fluid are left to the other lists.
it('lists each missing item once, with the lines that it stops and the day by which to order', () => {
  const facts = shopRecord({
    lines: [lineFacts(), lineFacts({ id: 'J-2.1', jobId: 'J-2', startOnDay: '2026-03-05' })],
  });
  const found = missingParts(facts, computeOutlook(facts).lines);
  const roles = found.map(({ role }) => role);
  expect(roles).toEqual(
    expect.arrayContaining(['go-ring', 'not-go-ring', 'collet', 'coning-body', 'cone-gauge']),
  );
  expect(new Set(roles).size).toBe(roles.length);
  expect(roles.filter((role) => role === 'die' || role === 'blade' || role === 'fluid')).toEqual([]);
  const ring = found.find(({ role }) => role === 'go-ring');
  expect(ring).toMatchObject({ neededOnDay: '2026-03-05', connectionId: '3-8-medium' });
  expect(ring?.lineIds.toSorted()).toEqual(['J-1.1', 'J-2.1']);
  expect((ring?.orderByOnDay ?? '9999') < '2026-03-05').toBe(true);
});

it('says so where the list of parts has none to order', () => {
  const facts = shopRecord({ lines: [lineFacts({ connectionId: '1-high' })] });
  const found = missingParts(facts, computeOutlook(facts).lines);
  expect(found.filter(({ role, part }) => role === 'go-ring' && part === null)).toHaveLength(1);
});

// source: identity. What a precious line waits for must come as surely as that line asks: never ordered later than for an
// ordinary one on the same day, and a line beside it that asks for less takes nothing from that.
it('is ordered as early as the most precious of its lines asks', () => {
  const orderBy = (...values: ('ordinary' | 'precious')[]) => {
    const lines = values.map((value, n) => lineFacts({ id: `J-${n}.1`, jobId: `J-${n}`, value }));
    const facts = shopRecord({ lines });
    return missingParts(facts, computeOutlook(facts).lines).find(({ role }) => role === 'go-ring')
      ?.orderByOnDay;
  };
  expect((orderBy('precious') ?? '9999') < (orderBy('ordinary') ?? '')).toBe(true);
  expect(orderBy('precious', 'ordinary')).toBe(orderBy('precious'));
  expect(orderBy('ordinary', 'precious')).toBe(orderBy('precious'));
});
