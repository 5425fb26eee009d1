import { expect, it } from 'vitest';
import { exposureSumOf, logExposure } from '@/lib/life/exposure-sum';
import { cellsOf } from '@/lib/life/observation';
import { layOut } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge } from '@/tests/support/edge-histories';

const parts = [
  cut(30),
  cut(20, { materialId: 'b' }),
  cut(7, { materialId: 'b', dry: true }),
  cut(4, { rework: true, dry: true }),
];
const layout = layOut(
  [edge('t', { before: parts })],
  [],
  defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] }),
);
const sum = exposureSumOf(cellsOf(parts), layout);
const theta = Float64Array.from(layout.names, (_, i) => Math.sin(i + 1));

/** A copy: the room is written over by the next evaluation. */
function at(point: Float64Array) {
  return structuredClone(logExposure(sum, point));
}

// source: hand. X = 30 + 20·b + 7·b·dry + 4·dry·rework with the factors as e to the figure.
it('adds up base times factors', () => {
  const factor = (name: string): number => Math.exp(theta[layout.indexOf[name] ?? -1] ?? Number.NaN);
  const [b, dry, rework] = [factor('material:b'), factor('dry'), factor('rework')];
  expect(Math.abs(Math.exp(at(theta).log) / (30 + 20 * b + 7 * b * dry + 4 * dry * rework) - 1)).toBeLessThan(
    1e-14,
  );
});

// source: formula. Central differences.
it('has the right first and second derivatives', () => {
  const h = 1e-5;
  const n = sum.params.length;
  const room = at(theta);
  sum.params.forEach((index, a) => {
    const [up, down] = [h, -h].map((step) =>
      at(theta.map((value, i) => (i === index ? value + step : value))),
    );
    if (up === undefined || down === undefined) throw new Error('two points');
    expect(Math.abs((up.log - down.log) / (2 * h) - (room.gradient[a] ?? 0))).toBeLessThan(1e-10);
    for (let b = 0; b < n; b++) {
      const slope = ((up.gradient[b] ?? 0) - (down.gradient[b] ?? 0)) / (2 * h);
      expect(Math.abs(slope - (room.hessian[a * n + b] ?? 0))).toBeLessThan(1e-10);
    }
  });
});
