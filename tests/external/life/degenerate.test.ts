import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandEnds, endsLeft, likelyEnds, safeEnds } from '@/lib/ensemble/forecast';
import { fitLife } from '@/lib/life/fit-life';
import type { EdgeHistory, ExposurePart } from '@/lib/life/observation';
import { defaultLifePriors } from '@/lib/life/priors';

const priors = defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] });
const guess = { partId: 'die-3-8', odIn: 0.375, lifeBase: 1200, factor: 2 };
const part = (base: number, materialId = 'ref'): ExposurePart => ({
  materialId,
  dry: false,
  rework: false,
  base,
});

function edge(
  i: number,
  before: ExposurePart[],
  during: ExposurePart[] = [],
  end: EdgeHistory['end'] = 'in-service',
) {
  const about = { kind: 'die', partId: 'die-3-8', odIn: 0.375, regrinds: 0 } as const;
  return { ...about, toolId: `T${i}`, edgeNo: 1, before, during, end };
}
const many = (count: number, one: (i: number) => EdgeHistory): EdgeHistory[] =>
  Array.from({ length: count }, (_, i) => one(i));

const LOGS: Record<string, readonly EdgeHistory[]> = {
  'nothing at all': [],
  'no failures at all': many(30, (i) => edge(i, [part(100 + i)])),
  'one failure': [...many(10, (i) => edge(i, [part(500)])), edge(99, [part(800)], [part(10)], 'worn')],
  'all tools identical': many(50, (i) => edge(i, [part(1000)], [part(10)], 'worn')),
  'all identical, to the turn': many(50, (i) => edge(i, [part(1000)], [], 'worn')),
  'zero ends': [edge(1, []), edge(2, [part(0)], [], 'worn'), edge(3, [part(0)], [part(0)], 'worn')],
  'a material seen once': [edge(1, [part(100), part(5, 'tin')]), edge(2, [part(700)], [part(20)], 'worn')],
  'exposures of one': many(20, (i) =>
    edge(i, [part(1 + i / 100)], [part(0.5)], i % 2 ? 'worn' : 'in-service'),
  ),
  'exposures of ten million': many(20, (i) =>
    edge(i, [part(1e7 + i * 2e5)], [part(1e5)], i % 2 ? 'worn' : 'in-service'),
  ),
  'exposures from one to ten million': many(40, (i) =>
    edge(i, [part(10 ** (i % 8))], [part(1)], i % 3 ? 'worn' : 'in-service'),
  ),
  'worn out in the first end': many(10, (i) => edge(i, [], [part(10)], 'worn')),
  'ten thousand tools': many(10_000, (i) =>
    edge(i, [part(200 + ((i * 37) % 1500))], i % 2 ? [part(20)] : [], i % 2 ? 'worn' : 'in-service'),
  ),
};

// source: hand. Whatever the log holds, the search ends, and every answer is a finite count of ends, none below zero, safe ends
// no more than likely ones, likely ones within the band.
describe.each(Object.entries(LOGS))('a log with %s', (_name, histories) => {
  it.each([
    ['a first guess', [guess]],
    ['none', []],
  ] as const)('with %s gives figures', (_which, guesses) => {
    const die = fitLife({ kind: 'die', histories, priors, guesses });
    if (!die.ok) throw new Error(die.sentence);
    expect(die.stoppedBy).toBe('converged');
    const tool = {
      toolId: 'X',
      kind: 'die',
      partId: 'die-3-8',
      odIn: 0.375,
      regrinds: 0,
      exposure: [part(100)],
    } as const;
    const ensemble = buildEnsemble({ kinds: { die }, tools: [tool], parts: [] });
    const left = endsLeft(ensemble, 'X', {
      exposurePerEnd: 10.5,
      materialId: 'ref',
      dry: false,
      rework: false,
    });
    if (left === undefined) throw new Error('the tool is known');
    expect(left.sortedEnds.every((ends) => ends >= 0 && Number.isFinite(ends))).toBe(true);
    const { low, high } = bandEnds(left);
    expect(low).toBe(safeEnds(left));
    expect(low).toBeLessThanOrEqual(likelyEnds(left));
    expect(likelyEnds(left)).toBeLessThanOrEqual(high);
  });
});

// source: hand. On day one nothing has worn: the figures say so, and without a first guess that they are the product's own.
it('day one is labelled as what it is', () => {
  const warnings = (guesses: readonly (typeof guess)[]) => {
    const fit = fitLife({ kind: 'die', histories: [], priors, guesses });
    return fit.ok ? fit.warnings : [];
  };
  expect(warnings([guess])).toEqual(['no-worn-edges']);
  expect(warnings([])).toEqual(['no-worn-edges', 'default-life-used']);
});
