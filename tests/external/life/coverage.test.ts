import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { bandOf } from '@/lib/ensemble/reasons';
import { simulateShop } from '@/tests/support/simulated-shop';
import { fitted } from '@/tests/support/small-shop';

const SHOPS = 300;

/** One tool of each shop: was its true remaining life below, inside or above the band? */
function tally(tools: number) {
  const count = { below: 0, inside: 0, above: 0, all: 0 };
  for (let s = 0; s < SHOPS; s++) {
    const shop = simulateShop(`coverage:${tools}:${s}`, tools);
    const subject = shop.inService[0];
    if (subject === undefined) continue;
    const die = fitted(shop.histories);
    const left = buildEnsemble({
      kinds: { die },
      tools: [subject.tool],
      parts: [],
      drawCount: 512,
    }).residualLife(subject.tool.toolId);
    if (left === undefined) throw new Error('the tool is known');
    const { low, high } = bandOf(left);
    count.all++;
    if (subject.trulyLeft < low) count.below++;
    else if (subject.trulyLeft > high) count.above++;
    else count.inside++;
  }
  return count;
}

// source: formula. Figures drawn from the priors, lives from the figures: an exact Bayesian band covers 80 %, with a tenth
// on each side. One tool to a shop, so the counts are binomial; 3.3 standard errors (one run in a thousand by chance).
// The approximation of the posterior adds its own error, which must stay inside that.
describe.each([3, 12, 60])('shops with %d tools', (tools) => {
  const { below, inside, above, all } = tally(tools);
  const allowed = (share: number): number => 3.3 * Math.sqrt((share * (1 - share)) / all);

  it('10 to 90 % bands of remaining life cover eight tenths', () => {
    expect(all).toBeGreaterThan(250);
    expect(Math.abs(inside / all - 0.8)).toBeLessThan(allowed(0.8));
  });

  it('and miss no more than a tenth on either side', () => {
    expect(Math.abs(below / all - 0.1)).toBeLessThan(allowed(0.1));
    expect(Math.abs(above / all - 0.1)).toBeLessThan(allowed(0.1));
  });
});
