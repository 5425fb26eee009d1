import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandEnds, endsLeft, likelyEnds, probabilityFinishes, safeEnds } from '@/lib/ensemble/forecast';
import { smallShop } from '@/tests/support/small-shop';

const CUT = { exposurePerEnd: 10.5, materialId: 'ref', dry: false, rework: false };

// source: hand. Ten draws of ends left: 0.4, 1.4 … 9.4.
describe('counts over ten draws', () => {
  const left = { sortedEnds: Float64Array.from({ length: 10 }, (_, i) => i + 0.4) };

  it('safe, likely and band ends', () => {
    expect(safeEnds(left, 0.9)).toBe(1);
    expect(safeEnds(left, 1)).toBe(0);
    expect(likelyEnds(left)).toBe(5);
    expect(bandEnds(left)).toEqual({ low: 1, high: 9 });
  });

  it('chance of finishing, with its Monte Carlo error', () => {
    expect(probabilityFinishes(left, 0).probability).toBe(1);
    expect(probabilityFinishes(left, 3)).toEqual({ probability: 0.7, standardError: Math.sqrt(0.021) });
    expect(probabilityFinishes(left, 10).probability).toBe(0);
  });
});

const ensemble = buildEnsemble(smallShop());
const left = endsLeft(ensemble, 'D-38-11', CUT);
if (left === undefined) throw new Error('the tool is known');

// source: identity. One set of draws behind every answer: they cannot contradict each other.
it.each([0.5, 0.8, 0.9, 0.99])('safe ends at %d are finished that surely, one more is not', (confidence) => {
  const ends = safeEnds(left, confidence);
  expect(probabilityFinishes(left, ends).probability).toBeGreaterThanOrEqual(confidence);
  expect(probabilityFinishes(left, ends + 1).probability).toBeLessThan(confidence);
});

it('leaves fewer ends in a harder material, cut dry, and in longer threads', () => {
  const likely = (more: Partial<typeof CUT>): number => {
    const other = endsLeft(ensemble, 'D-38-11', { ...CUT, ...more });
    return other === undefined ? Number.NaN : likelyEnds(other);
  };
  expect(likely({ materialId: '2507' })).toBeLessThan(0.6 * likely({}));
  expect(likely({ dry: true })).toBeLessThan(likely({}));
  expect(likely({ exposurePerEnd: 18 })).toBeLessThan(likely({}));
});

it('answers nothing about a tool or a material that it does not know', () => {
  expect(endsLeft(ensemble, 'D-00', CUT)).toBeUndefined();
  expect(endsLeft(ensemble, 'D-38-11', { ...CUT, materialId: 'unheard-of' })).toBeUndefined();
  expect(() => endsLeft(ensemble, 'D-38-11', { ...CUT, exposurePerEnd: 0 })).toThrow('invariant');
});
