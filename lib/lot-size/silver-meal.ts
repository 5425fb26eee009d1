import { costOfOrder, type LotPlan, type LotProblem } from './wagner-whitin';

/**
 * Lot sizes by a rule of thumb: let an order cover one more week as long as the cost of a week falls. Looks no further
 * ahead than that, so a plan that changes every week changes little; seldom a few per cent dearer than the optimum.
 * `averageCosts`: for each order the cost per period of covering 1, 2, … periods, the first rise included: ordering and
 * holding, as the rule has it; what the units themselves cost counts in `cost` alone. Domain: as wagnerWhitin. Source: E. A. Silver and H. C. Meal, Production and Inventory Management 14 (1973).
 * @example silverMeal({ demand: [18, 30, 42, 5, 20], orderCost: 80, holdingCost: 2 }).cost // => 310
 */
export function silverMeal(
  problem: LotProblem,
): LotPlan & { readonly averageCosts: readonly (readonly number[])[] } {
  const { demand } = problem;
  const quantities = demand.map(() => 0);
  const averageCosts: number[][] = [];
  let cost = 0;
  let start = 0;
  while (start < demand.length) {
    if (demand[start] === 0) {
      start++;
      continue;
    }
    const averages = averagesFrom(problem, start);
    averageCosts.push(averages);
    const last = averages.length - 1;
    const rose = last > 0 && (averages[last] as number) > (averages[last - 1] as number);
    const periods = rose ? last : averages.length;
    quantities[start] = demand.slice(start, start + periods).reduce((total, units) => total + units, 0);
    cost += costOfOrder(problem, start, start + periods - 1);
    start += periods;
  }
  return { quantities, cost, averageCosts };
}

function averagesFrom(problem: LotProblem, start: number): number[] {
  const averages: number[] = [];
  const keeping = { ...problem, unitCost: 0 };
  for (let t = start; t < problem.demand.length; t++) {
    const average = costOfOrder(keeping, start, t) / (t - start + 1);
    averages.push(average);
    if (averages.length > 1 && average > (averages[averages.length - 2] as number)) break;
  }
  return averages;
}
