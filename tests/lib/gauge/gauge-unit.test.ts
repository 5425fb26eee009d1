import { expect, it } from 'vitest';
import { gaugeUnitLabel, inBaseUnit } from '@/lib/gauge/gauge-unit';
import { FeatureSchema } from '@/lib/shop/calibration';

const row = (unit: string, error: number) =>
  FeatureSchema.parse({
    ...{ feature: 'pitch diameter', unit, asFoundError: error, asLeftError: null },
    ...{ lowerLimit: -error, upperLimit: error, expandedUncertainty: error / 2 },
  });

// source: published. 1 in = 25.4 mm exactly (1959).
it.each([
  ['in', 0.0001, 2.54],
  ['mm', 0.005, 5],
  ['um', 3, 3],
  ['deg', 0.1, 0.1],
])('%s: %s is %s in the unit it is compared in', (unit, error, expected) => {
  const base = inBaseUnit(row(unit, error));
  expect(base.asFoundError).toBeCloseTo(expected, 12);
  expect(base.upperLimit).toBeCloseTo(expected, 12);
  expect(base.expandedUncertainty).toBeCloseTo(expected / 2, 12);
  expect(base.asLeftError).toBeNull();
});

it('a k that is not stated is 2, and labels are printable', () => {
  expect(row('um', 1).coverageFactor).toBe(2);
  expect(['mm', 'um', 'in', 'deg', 'N.m', '%'].map((unit) => gaugeUnitLabel(unit as 'mm'))).toEqual([
    ...['mm', 'µm', 'in', '°', 'N·m', '%'],
  ]);
});
