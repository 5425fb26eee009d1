import fc from 'fast-check';
import { expect, it } from 'vitest';
import { studentTCdf, studentTQuantile } from '@/lib/numeric/student-t';
import { relativeMiss } from '@/tests/support/relative-miss';

// source: other-software. SciPy 1.17.1, scipy.stats.t.cdf(t, dof).
it.each([
  [0.3, 4, 0.6104392858612702],
  [2.5, 4, 0.966616727594006],
  [-1.7, 7, 0.0664644483912776],
  [12, 3, 0.9993774920996054],
  [40, 2, 0.9996877926639076],
  [1.2, 60, 0.8825719015990994],
])('cumulative distribution at t = %f with %f degrees of freedom', (t, dof, expected) => {
  expect(relativeMiss(studentTCdf(t, dof), expected)).toBeLessThan(1e-12);
});

// source: other-software. SciPy 1.17.1, scipy.stats.t.ppf(p, dof).
it.each([
  [0.9, 4, 1.533206274058944],
  [0.975, 10, 2.228138851986274],
  [0.0001, 3, -22.203742273204178],
  [0.999, 4, 7.173182219782307],
  [0.55, 30, 0.1267296131320737],
  [1e-9, 5, -98.93722464836996],
])('quantile at p = %f with %f degrees of freedom', (p, dof, expected) => {
  expect(relativeMiss(studentTQuantile(p, dof), expected)).toBeLessThan(1e-10);
});

// source: published. Student's t, upper 2.5 % point: 12.706 at 1, 2.776 at 4, 2.086 at 20 (three-place tables; from memory).
it('agrees with the printed tables', () => {
  expect(studentTQuantile(0.975, 1)).toBeCloseTo(12.706, 3);
  expect(studentTQuantile(0.975, 4)).toBeCloseTo(2.776, 3);
  expect(studentTQuantile(0.975, 20)).toBeCloseTo(2.086, 3);
});

// source: identity. The quantile undoes the distribution.
it('goes there and back', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
      fc.double({ min: 1, max: 200, noNaN: true }),
      (p, dof) => {
        expect(studentTCdf(studentTQuantile(p, dof), dof)).toBeCloseTo(p, 11);
      },
    ),
  );
  expect([studentTQuantile(0, 3), studentTQuantile(1, 3), studentTQuantile(0.5, 3)]).toEqual([
    -Infinity,
    Infinity,
    0,
  ]);
  expect([studentTQuantile(2, 3), studentTCdf(1, 0)]).toEqual([Number.NaN, Number.NaN]);
});
