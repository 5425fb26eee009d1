import { describe, expect, it } from 'vitest';
import { residualAtHazard, survival } from '@/lib/life/weibull';
import { breakEvenChance, carryOn } from '@/lib/replacement/carry-on';
import { meanCycle, weibullReplacementAge } from '@/lib/replacement/weibull-age';
import known from '../../fixtures/replacement/carry-on.json';

const DRAWS = 4096;
/** Evenly spread chance, so that a known life is met without noise. */
const hazards = Float64Array.from({ length: DRAWS }, (_, k) => -Math.log(1 - (k + 0.5) / DRAWS));

function atAge(life: { shape: number; scale: number }, ratio: number, rate: number) {
  const rates = new Float64Array(DRAWS).fill(rate);
  const costs = { plannedCost: 1, failureCost: ratio };
  return (age: number, work: number) => {
    const residual = hazards.map((hazard) => residualAtHazard(life, { age, hazard }));
    return carryOn(residual, new Float64Array(DRAWS).fill(work), rates, costs);
  };
}

describe('going on or changing first', () => {
  // source: other-software. SciPy, tests/fixtures/replacement/generate_carry_on.py: every number of jobs tried, the cheapest taken. Cases whose
  // second best is within 1 in 1000 are left out: the draws cannot tell them.
  it.each(known.oneSize.filter(({ rate, secondBest }) => secondBest / rate > 1.001))(
    'shape $shape, failure $ratio, jobs of $work: change before job $changeBeforeJob',
    ({ shape, ratio, work, rate, changeBeforeJob }) => {
      const ask = atAge({ shape, scale: 1 }, ratio, rate);
      let job = 2;
      while (!ask((job - 1) * work, work).changeFirst && job < 200) job++;
      expect(job).toBe(changeBeforeJob);
    },
  );

  // source: other-software. NumPy, the same file: policy iteration over age and size of the next job. The rule looks one job
  // ahead and has its rate from the best age, not from the best policy: 1 in 1000 dearer at the most.
  it.each(known.severalSizes)(
    'shape $shape, failure $ratio, jobs of several sizes: as cheap as the best policy of all',
    ({ shape, ratio, sizes, shares, scale, rate }) => {
      const life = { shape, scale };
      const costs = { plannedCost: 1, failureCost: ratio };
      const ask = atAge(life, ratio, weibullReplacementAge(life, costs).costRate);
      const found = longRun({ life, ratio, sizes, shares }, (age, work) => ask(age, work).changeFirst);
      expect(found).toBeGreaterThan(rate * (1 - 1e-6));
      expect(found).toBeLessThan(rate * 1.001);
    },
  );

  // source: formula. Both forms of the break-even, where all edges are alike and none outlives the work: R spread evenly over 0 … w
  // in the futures that fail.
  it('says the same as the newsvendor’s ratio', () => {
    const [work, rate, extra] = [20, 2, 50];
    for (const share of [0.2, 0.5, 0.6, 0.7, 0.9]) {
      const residual = Float64Array.from({ length: DRAWS }, (_, k) =>
        k < share * DRAWS ? work : (work * (k - share * DRAWS + 0.5)) / ((1 - share) * DRAWS),
      );
      const fill = (value: number) => new Float64Array(DRAWS).fill(value);
      const costs = { plannedCost: 10, failureCost: 10 + extra };
      const { changeFirst } = carryOn(residual, fill(work), fill(rate), costs);
      expect(changeFirst).toBe(share < breakEvenChance({ workCost: work * rate, extraCost: extra }));
    }
  });

  // source: hand. Two futures, 4 and 12 left, 10 asked, 3 a unit: 12 and 30, mean 21; a failure costs 30 more: 1 − 21/30.
  it('puts both ways into money', () => {
    expect(carryOn([4, 12], [10, 10], [3, 3], { plannedCost: 20, failureCost: 50 })).toEqual({
      ...{ finishes: 0.5, workCost: 30, usedCost: 21, extraCost: 30 },
      ...{ breakEven: 1 - 21 / 30, changeFirst: false },
    });
    expect(carryOn([4, 12], [10, 10], [1, 1], { plannedCost: 20, failureCost: 50 }).changeFirst).toBe(true);
  });

  // source: hand. A failure that costs no more than a planned change is never a reason; nor one cheaper than half the work.
  it('never changes first where a failure costs no more', () => {
    expect(carryOn([0], [1], [9], { plannedCost: 5, failureCost: 5 }).changeFirst).toBe(false);
    expect(breakEvenChance({ workCost: 100, extraCost: 50 })).toBe(0);
    expect(() => carryOn([], [], [], { plannedCost: 1, failureCost: 2 })).toThrow();
  });

  // source: identity. A dearer failure never lowers the break-even chance, dearer wear never raises it.
  it('rises with what a failure costs and falls with what the work is worth', () => {
    let before = 0;
    for (const extraCost of [1, 10, 20, 40, 80, 1000]) {
      const chance = breakEvenChance({ workCost: 20, extraCost });
      expect(chance).toBeGreaterThanOrEqual(before);
      expect(breakEvenChance({ workCost: 25, extraCost })).toBeLessThanOrEqual(chance);
      before = chance;
    }
  });
});

interface Work {
  readonly life: { readonly shape: number; readonly scale: number };
  readonly ratio: number;
  readonly sizes: readonly number[];
  readonly shares: readonly number[];
}

/** Cost per unit of a rule in the long run: the chain of ages before each job, played until it has settled. */
function longRun(
  { life, ratio, sizes, shares }: Work,
  changes: (age: number, work: number) => boolean,
): number {
  const steps = new Map<number, { to: number; share: number; fails: number; cost: number; cut: number }[]>();
  const stepsAt = (age: number) => {
    const held = steps.get(age);
    if (held !== undefined) return held;
    const made = sizes.map((size, i) => {
      const first = age > 0 && changes(age, size);
      const start = first ? 0 : age;
      const fails = 1 - survival(life, start + size) / survival(life, start);
      const cut = (meanCycle(life, start + size) - meanCycle(life, start)) / survival(life, start);
      return { to: start + size, share: shares[i] ?? 0, fails, cost: (first ? 1 : 0) + fails * ratio, cut };
    });
    steps.set(age, made);
    return made;
  };
  let [ages, rate] = [new Map([[0, 1]]), 0];
  for (let job = 0; job < 400; job++) {
    const next = new Map<number, number>();
    let [cost, cut] = [0, 0];
    for (const [age, here] of ages) {
      for (const step of stepsAt(age)) {
        const mass = here * step.share;
        cost += mass * step.cost;
        cut += mass * step.cut;
        next.set(0, (next.get(0) ?? 0) + mass * step.fails);
        if (step.fails < 1 - 1e-9) next.set(step.to, (next.get(step.to) ?? 0) + mass * (1 - step.fails));
      }
    }
    [ages, rate] = [next, cost / cut];
  }
  return rate;
}
