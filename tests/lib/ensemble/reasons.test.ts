import { expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandOf, reasonsFor } from '@/lib/ensemble/reasons';
import { fitted, HISTORIES, PARTS, smallShop, TOOLS } from '@/tests/support/small-shop';

it('names the counts, the material and the typical life behind an estimate', () => {
  const reasons = reasonsFor(buildEnsemble(smallShop()), 'D-38-11', '2507');
  // source: hand. Counted in tests/support/small-shop.ts.
  expect(reasons?.partCounts).toEqual({ worn: 8, incident: 0, removedWorking: 0, inService: 2 });
  expect(reasons?.kindCounts).toEqual({ worn: 8, incident: 1, removedWorking: 0, inService: 2 });
  expect(reasons?.restsOn).toBe('worn-of-part');
  // Eight dies worn around 1281 turns.
  expect(reasons?.typicalLife.low).toBeLessThan(1281);
  expect(reasons?.typicalLife.high).toBeGreaterThan(1281);
  // The prior for 2507 is 2.5, hardly touched by 50 turns: band 1.5 to 4.2.
  expect(Math.abs((reasons?.materialFactor?.median ?? 0) - 2.5)).toBeLessThan(0.2);
  expect(reasonsFor(buildEnsemble(smallShop()), 'D-38-11', 'ref')?.materialFactor).toBeUndefined();
});

it('says what it rests on when nothing of the part has worn', () => {
  const restsOn = (
    histories: typeof HISTORIES,
    guesses: { partId?: string; odIn: number; lifeBase: number; factor: number }[],
  ) =>
    reasonsFor(
      buildEnsemble({ kinds: { die: fitted(histories, { guesses }) }, tools: TOOLS, parts: PARTS }),
      'D-38-11',
    )?.restsOn;
  const guess = { partId: 'die-38', odIn: 0.375, lifeBase: 1300, factor: 2 };
  expect(restsOn([], [])).toBe('default');
  expect(restsOn([], [{ ...guess, partId: 'die-56' }])).toBe('first-guess-of-kind');
  expect(restsOn([], [guess])).toBe('first-guess-of-part');
  const others = HISTORIES.map((history) => ({ ...history, partId: 'die-56' }));
  expect(restsOn(others, [guess])).toBe('worn-of-kind');
});

it('has no reasons for a tool that it does not know', () => {
  expect(reasonsFor(buildEnsemble(smallShop()), 'D-00')).toBeUndefined();
});

// source: hand.
it('reads a band by counting', () => {
  expect(bandOf(Float64Array.from({ length: 11 }, (_, i) => i * 10))).toEqual({
    low: 10,
    median: 50,
    high: 90,
  });
});
