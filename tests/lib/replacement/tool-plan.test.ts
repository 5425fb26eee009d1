import { expect, it } from 'vitest';
import { shopReplacement } from '@/lib/replacement/shop-replacement';
import { compareToolPlans, toolPlans } from '@/lib/replacement/tool-plan';
import { issueShop } from '../../support/issue-shop';
import { lineFacts } from '../../support/shop-record';

const shop = issueShop({
  lines: [lineFacts({ ends: 20 }), lineFacts({ id: 'J-2.1', jobId: 'J-2', ends: 60 })],
});
const { parts } = shopReplacement(shop.facts, shop.ensemble);
const plans = parts[0] === undefined ? [] : toolPlans(shop.facts, shop.ensemble, parts[0]);
const plan = (id: string) => plans.find(({ toolId }) => toolId === id);

// source: hand. The more an edge has cut, the less it should still cut; a band has its middle inside.
it('gives a worn edge less than a fresh one', () => {
  expect(plan('D-31')?.moreEnds).toBeLessThan(plan('D-32')?.moreEnds ?? 0);
  expect(plan('D-32')?.moreEnds).toBeLessThan(plan('D-33')?.moreEnds ?? 0);
  for (const { lowDay, onDay, highDay } of plans) {
    expect((lowDay ?? '0') <= (onDay ?? '9999')).toBe(true);
    expect((onDay ?? '9999') <= (highDay ?? '9999')).toBe(true);
  }
  expect(plans.flatMap(({ lineIds }) => lineIds).sort()).toEqual(['J-1.1', 'J-2.1']);
});

// source: hand. An edge that goes out with work that cannot be remade is changed earlier.
it('follows the value of the job', () => {
  const lines = shop.facts.lines.map((line) => ({ ...line, value: 'precious' as const }));
  const dear = issueShop({ lines });
  const first = shopReplacement(dear.facts, dear.ensemble).tools.find(({ lineIds }) =>
    lineIds.includes('J-2.1'),
  );
  expect(first?.value).toBe('precious');
  expect(first?.moreEnds).toBeLessThan(plan(first?.toolId ?? '')?.moreEnds ?? 0);
});

// source: hand. By day; without a day last.
it('puts the first change on top', () => {
  const [one] = plans;
  if (one === undefined) throw new Error('there are plans');
  const early = { ...one, onDay: '2026-03-03' };
  const never = { ...one, onDay: null };
  expect([never, early].sort(compareToolPlans(shop.ensemble))[0]).toBe(early);
});
