import { expect, it } from 'vitest';
import { edgeNeeds } from '@/lib/orders/edge-need';
import { regrindSupply, regrindTurnaroundDays, worthRegrinding } from '@/lib/orders/regrind-supply';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { edgeFacts } from '../../support/edge-facts';
import { statedDraws } from '../../support/life-draws';
import { lineFacts, shopRecord, toolFacts } from '../../support/shop-record';
import { wearShop } from '../../support/wear-shop';

const draws = {
  ...statedDraws({ drawCount: 4, factors: { '316-cw': 1 } }),
  regroundLife: (_: string, { regrinds }: { regrinds: number }) => new Float64Array(4).fill(100 * regrinds),
};
const twice = () => 2;
const supplyOf = (state: 'in-crib' | 'regrind' | 'quarantined', edgeNo: number, end: 'worn' | null) => {
  const tool = toolFacts({ id: 'B', role: 'blade', state });
  const facts = shopRecord({ tools: [tool], edges: [edgeFacts('B', { edgeNo, end })] });
  return regrindSupply(tool, facts, draws, twice);
};
const lives = (...of: Parameters<typeof supplyOf>) => supplyOf(...of)?.again.lives.map(([life]) => life);

// source: hand. Two regrinds pay: a first edge has both before it, a second one, a third none. What is out has its next edge counted
// already. Set aside it counts for nothing; a worn one can go out today.
it('knows what regrinds still give a blade', () => {
  expect(lives('in-crib', 1, null)).toEqual([100, 200]);
  expect(lives('in-crib', 2, 'worn')).toEqual([200]);
  expect(lives('in-crib', 3, 'worn')).toBeUndefined();
  expect(lives('regrind', 1, 'worn')).toEqual([200]);
  expect(lives('quarantined', 1, 'worn')).toBeUndefined();
  expect([supplyOf('in-crib', 1, 'worn')?.isWorn, supplyOf('regrind', 1, 'worn')?.isWorn]).toEqual([
    true,
    false,
  ]);
});

// source: hand. 14 days and one for the receiving check.
it('is away for the regrind and its check', () => {
  expect(regrindTurnaroundDays({ costs: DEFAULT_COSTS })).toBe(15);
});

// source: hand. A worn blade on the shelf and a line that begins in 20 days: sent today it is back on day 15 and does it; one that begins
// in 5 days needs a new blade, as does every line where no regrind counts.
it('spares a new blade where the worn one is back in time', () => {
  const needed = (startOnDay: string, dueOnDay: string, worth?: typeof twice) => {
    const line = lineFacts({ ends: 2, operations: ['cone'], startOnDay, dueOnDay });
    const facts = shopRecord({
      lines: [line],
      tools: [toolFacts({ id: 'B', role: 'blade' })],
      edges: [edgeFacts('B', { end: 'worn' })],
    });
    const life = {
      ...draws,
      regroundLife: () => new Float64Array(4).fill(1e6),
      newLife: () => new Float64Array(4).fill(1e6),
    };
    const blade = edgeNeeds(facts, life, 'as-here', 84, worth).find(({ kind }) => kind === 'blade');
    return blade?.walk.parts[0]?.needDays.length;
  };
  expect(needed('2026-03-22', '2026-03-27', twice)).toBe(0);
  expect(needed('2026-03-22', '2026-03-27')).toBe(1);
  expect(needed('2026-03-07', '2026-03-12', twice)).toBe(1);
});

// source: hand. Futures without prices of wear say nothing of regrinding; a die is never reground.
it('takes the shop’s own decision', () => {
  const { facts, ensemble } = wearShop();
  expect(worthRegrinding(facts, draws)).toBeUndefined();
  const worth = worthRegrinding(facts, ensemble);
  expect([worth?.('die-3-8'), worth?.('no-such')]).toEqual([0, 0]);
});
