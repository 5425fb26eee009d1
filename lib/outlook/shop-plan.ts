import type { PlanInput } from '../capability/check-plan';
import type { LifeDraws } from '../ensemble/life-draws';
import { planArrivals, planConnections, planLines, requiredProbability, setItems } from './plan-facts';
import type { ShopFacts } from './shop-facts';

/** Below even chances a line counts as one that cannot be made. Common practice, no source. */
const FLOOR_PROBABILITY = 0.5;

/** The shop's record as the plan check takes it: open lines, tools, what is on order, and the one set of futures. */
export function shopPlan(facts: ShopFacts, draws: LifeDraws): PlanInput {
  return {
    today: facts.today,
    lines: planLines(facts),
    connections: planConnections(facts),
    items: setItems(facts),
    arrivals: planArrivals(facts),
    draws,
    targets: {
      requiredProbability: requiredProbability(facts.shop, 'ordinary'),
      floorProbability: FLOOR_PROBABILITY,
    },
  };
}
