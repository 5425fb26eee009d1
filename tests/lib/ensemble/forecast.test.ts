import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandEnds, endsLeft, likelyEnds, probabilityFinishes, safeEnds } from '@/lib/ensemble/forecast';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { smallShop } from '@/tests/support/small-shop';

const CUT = { exposurePerEnd: 10.5, materialId: 'ref', dry: false, rework: false };

// source: hand. Ten draws of ends left: 0.4, 1.4 … 9.4.
describe('counts over ten draws', () => {
  const left = { sortedEnds: Float64Array.from({ length: 10 }, (_, i) => i + 0.4) };

  it('safe, likely and band ends', () => {
    expect(safeEnds(left, 0.9)).toBe(1);
    expect(safeEnds(left, 1)).toBe(0);
    expect(likelyEnds(left)).toBe(5);
    // 1 to 8 are eight of the ten whole numbers; to 9 they would be nine.
    expect(bandEnds(left)).toEqual({ low: 1, high: 8 });
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

const NOTHING = 1e-12;

/** Share of the draws within a band of whole ends, both counted in. */
function heldBy(ends: readonly number[], { low, high }: { low: number; high: number }): number {
  return ends.filter((n) => Math.floor(n) >= low && Math.floor(n) <= high).length / ends.length;
}

// source: formula. By the definition: the lower end is the safe number, and no other upper end holds a share nearer to 0.8.
describe('the band of whole ends', () => {
  const random = streamOfKey('bands');
  const samples = [1, 3, 8, 40, 900].flatMap((scale) =>
    [50, 333, 2048].map((count) =>
      Array.from({ length: count }, () => scale * Math.sqrt(-Math.log(random()))).sort((a, b) => a - b),
    ),
  );
  it.each(samples.map((ends) => [ends.length, Math.round(ends.at(-1) ?? 0), ends] as const))(
    'of %d draws up to %d holds the share nearest to eight tenths',
    (_count, _most, ends) => {
      const left = { sortedEnds: Float64Array.from(ends) };
      const band = bandEnds(left);
      expect(band.low).toBe(safeEnds(left, 0.9));
      const miss = (high: number) => Math.abs(heldBy(ends, { low: band.low, high }) - 0.8);
      for (let high = band.low; high <= Math.floor(ends.at(-1) ?? 0); high++)
        expect(miss(band.high)).toBeLessThanOrEqual(miss(high) + NOTHING);
    },
  );

  it('is a single number where that holds more than eight tenths', () => {
    const ends = [...Array.from({ length: 95 }, () => 0.5), 1.5, 1.5, 1.5, 2.5, 2.5];
    expect(bandEnds({ sortedEnds: Float64Array.from(ends) })).toEqual({ low: 0, high: 0 });
  });
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
