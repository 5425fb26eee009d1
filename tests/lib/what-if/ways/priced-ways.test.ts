import { describe, expect, it } from 'vitest';
import { pricedWays } from '@/lib/what-if/ways/priced-ways';
import { changed, FAR, question } from '../../../support/way-question';

describe('ways out, priced', () => {
  it('has none for a line that can be made', () => {
    expect(pricedWays(question({ edges: [] }, { ends: 0 }))).toEqual([]);
  });

  // source: hand. Free and on its own dates first, then by price, then what waits.
  it('puts the cheapest that keeps the dates on top', () => {
    const asked = question({ tools: changed('BLADE-1', { state: 'quarantined' }) }, { ends: 2, ...FAR });
    const made = pricedWays(asked).filter(({ verdict }) => verdict === 'can-make');
    const costs = made.flatMap(({ costMinor }) => costMinor ?? []);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(made[0]?.actions[0]?.kind).toBe('free');
  });
});
