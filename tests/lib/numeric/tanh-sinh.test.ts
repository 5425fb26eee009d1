import { expect, it } from 'vitest';
import { endpointQuadrature } from '@/lib/numeric/tanh-sinh';

const integral = (f: (x: number, fromHigh: number) => number) =>
  endpointQuadrature().reduce((sum, { fromLow, fromHigh, weight }) => sum + weight * f(fromLow, fromHigh), 0);

// source: formula. ∫₀¹ x^p dx = 1/(p + 1), also where it has no end at 0; ∫ eˣ = e − 1; ∫ x^−½(1−x)^−½ = π.
it('integrates functions with poles and corners at the ends', () => {
  expect(integral(() => 1)).toBeCloseTo(1, 13);
  expect(integral((x) => x ** -0.5)).toBeCloseTo(2, 12);
  expect(integral((x) => x ** 1.3)).toBeCloseTo(1 / 2.3, 13);
  expect(integral((x) => Math.exp(x))).toBeCloseTo(Math.E - 1, 13);
  expect(integral((x, y) => 1 / Math.sqrt(x * y))).toBeCloseTo(Math.PI, 11);
});
