import { expect, it } from 'vitest';
import { bandOf } from '@/lib/ensemble/reasons';
import { exposurePerEnd, ownConnection, partWears } from '@/lib/outlook/part-wear';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { wearShop } from '../../support/wear-shop';

const shop = wearShop();
const wears = partWears(shop);
const die = wears.find(({ part }) => part.id === 'die-3-8');

// source: hand. Eight worn, one dropped, one taken out good, one cutting; one of unknown start says nothing.
it('counts what became of the edges of a part', () => {
  expect(die?.counts).toEqual({ worn: 8, incident: 1, removedWorking: 1, inService: 1 });
  expect(die?.unknownStarts).toBe(1);
  expect(die?.guess?.ends).toBe(150);
});

// source: hand. Eight dies wore out at 80 to 120 threads: the typical life is near 100, far from the guess of 150.
it('learns the typical life from them, in ends of the part’s own connection', () => {
  expect(die?.typicalEnds.median).toBeGreaterThan(90);
  expect(die?.typicalEnds.median).toBeLessThan(115);
  expect(die?.typicalEnds.high).toBeLessThan(150);
});

// source: identity. It is the same median life as behind every other screen, 10.5 turns to an end.
it('is the ensemble’s median life', () => {
  const life = shop.ensemble.medianLife('die', { partId: 'die-3-8', odIn: 0.375, regrinds: 0 });
  const { median } = bandOf(life ?? new Float64Array(1));
  expect(die?.typicalEnds.median).toBeCloseTo(median / 10.5, 9);
});

// source: hand. Dies first; parts without an edge have no wear.
it('lists dies before blades, and only parts with an edge', () => {
  expect(wears.map(({ part }) => part.role)).toEqual(['die', 'blade']);
});

// source: hand. The connection of the guess, else the first in use, else the first it fits; none for none.
it('ownConnection is the one that its first guess was typed for', () => {
  const part = { id: 'die-3-8', fitsConnectionIds: ['3-8-high', '3-8-medium'] };
  const connections = SHIPPED_CONNECTIONS.map((row) => ({ ...row, inUse: row.id === '3-8-high' }));
  const guess = { partId: 'die-3-8', connectionId: '3-8-medium', ends: 9, giveOrTake: 2 };
  expect(ownConnection({ guesses: [guess], connections }, part)?.id).toBe('3-8-medium');
  expect(ownConnection({ guesses: [], connections }, part)?.id).toBe('3-8-high');
  expect(ownConnection({ guesses: [], connections: [] }, part)).toBeUndefined();
});

// source: hand. 7/16 in at 24 threads per inch is 10.5 turns; the cone of 3/8 medium pressure 59.24 mm³ (life-beliefs).
it('exposurePerEnd counts turns of a thread and metal of a cone', () => {
  const size = SHIPPED_CONNECTIONS.find(({ id }) => id === '3-8-medium');
  if (size === undefined) throw new Error('no size');
  expect(exposurePerEnd('die', size)).toBeCloseTo(10.5, 9);
  expect(exposurePerEnd('blade', size)).toBeCloseTo(59.24037, 4);
});
