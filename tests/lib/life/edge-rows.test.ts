import { expect, it } from 'vitest';
import { applyForm, edgeRowOf, logMedianForm } from '@/lib/life/edge-rows';
import { layOut } from '@/lib/life/parameter-layout';
import { defaultLifePriors } from '@/lib/life/priors';
import { cut, edge } from '@/tests/support/edge-histories';

const layout = layOut(
  [edge('a')],
  [],
  defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] }),
);

it.each([
  {
    name: 'in service',
    history: edge('a', { during: [cut(5)] }),
    evidence: 'beyond',
    fromZero: false,
    total: 105,
  },
  {
    name: 'incident',
    history: edge('a', { end: 'incident' }),
    evidence: 'beyond',
    fromZero: false,
    total: 100,
  },
  {
    name: 'taken out good',
    history: edge('a', { end: 'removed-working' }),
    evidence: 'beyond',
    fromZero: false,
    total: 100,
  },
  {
    name: 'worn in a row',
    history: edge('a', { end: 'worn', during: [cut(5)] }),
    evidence: 'between',
    fromZero: false,
    total: 100,
  },
  {
    name: 'worn in its first row',
    history: edge('a', { end: 'worn', before: [], during: [cut(5)] }),
    evidence: 'between',
    fromZero: true,
    total: 5,
  },
  {
    name: 'worn exactly',
    history: edge('a', { end: 'worn' }),
    evidence: 'exactly',
    fromZero: false,
    total: 100,
  },
])('reads an edge that is $name', ({ history, evidence, fromZero, total }) => {
  const row = edgeRowOf(history, layout);
  expect(row).toMatchObject({ evidence, fromZero });
  // source: hand. The exposure up to which it certainly (or, from zero, at most) lasted.
  expect(Math.abs(Math.exp(row?.logBase ?? 0) - total)).toBeLessThan(1e-12);
});

it('reads nothing from an edge that cut nothing', () => {
  expect(edgeRowOf(edge('a', { before: [cut(0)] }), layout)).toBeUndefined();
});

// source: formula. logMedian + sizeExponent·ln(OD/0.375) + 2·regrind + part.
it('adds size, regrinds and part to the median', () => {
  const theta = layout.names.map((_, i) => i + 1);
  const of = (name: string): number => theta[layout.indexOf[name] ?? -1] ?? Number.NaN;
  const form = logMedianForm({ partId: 'die-38', odIn: 0.75, regrinds: 2 }, layout);
  const expected = of('logMedian') + of('sizeExponent') * Math.LN2 + 2 * of('regrind') + of('part:die-38');
  expect(Math.abs(applyForm(form, theta) - expected)).toBeLessThan(1e-12);
});
