import { expect, it } from 'vitest';
import { giveOrTakeOfRange, SHIPPED_MATERIALS } from '@/lib/shipped/materials';
import { MaterialSchema } from '@/lib/shop/noun';

// source: hand. √(4 ÷ 1.5) = √2.6667 = 1.633; √(8 ÷ 2.5) = √3.2 = 1.789; √3 = 1.732; √(1 ÷ 0.6) = 1.291.
it.each([
  ['2507', 2.5, 1.633],
  ['625', 4, 1.789],
  ['c-276', 4, 1.789],
  ['ti-2', 1.5, 1.732],
  ['316-annealed', 0.8, 1.291],
  ['304-annealed', 0.8, 1.291],
  ['316-cw', 1, 1],
])('%s wears %s times as fast, give or take %s', (id, factor, giveOrTake) => {
  const material = SHIPPED_MATERIALS.find((row) => row.id === id);
  expect(material?.factor).toBe(factor);
  expect(material?.factorGiveOrTake).toBeCloseTo(giveOrTake, 3);
});

// source: identity. The band factor ÷ g … factor × g is as wide, in proportion, as the range that it was read from.
it('keeps the width of the range', () => {
  const g = giveOrTakeOfRange(1.5, 4);
  expect((2.5 * g) / (2.5 / g)).toBeCloseTo(4 / 1.5, 12);
  expect(() => giveOrTakeOfRange(4, 1.5)).toThrow('range');
});

// source: identity.
it('has one reference, and rows that the door accepts', () => {
  expect(SHIPPED_MATERIALS.filter((row) => row.isReference).map((row) => row.id)).toEqual(['316-cw']);
  for (const row of SHIPPED_MATERIALS) expect(MaterialSchema.parse(row)).toEqual(row);
});
