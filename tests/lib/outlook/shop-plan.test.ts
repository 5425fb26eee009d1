import { expect, it } from 'vitest';
import { checkPlan } from '@/lib/capability/check-plan';
import { shopPlan } from '@/lib/outlook/shop-plan';
import { outlookOf, whatIfFacts } from '../../support/what-if-shop';

// source: identity. The outlook's verdicts are the plan check of the shop's plan on its own futures.
it('shopPlan is what the outlook is a check of', () => {
  const facts = whatIfFacts();
  const outlook = outlookOf(facts);
  const plan = shopPlan(facts, outlook.ensemble);
  expect(checkPlan(plan)).toEqual(outlook.lines);
  expect(plan.targets).toEqual({ requiredProbability: 0.9, floorProbability: 0.5 });
  expect(plan.arrivals[0]?.arrivalDayDraws?.length).toBe(outlook.ensemble.drawCount);
});
