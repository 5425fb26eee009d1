import { describe, expect, it } from 'vitest';
import { checkPlan } from '@/lib/capability/check-plan';
import type { Arrival, PlanLine } from '@/lib/capability/plan-input';
import { normalCdf } from '@/lib/numeric/normal';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, plan, planLine } from '../../support/plan-shop';

/**
 * The trade's own worked figures: a normal life in turns with standard deviation 0.3 of its mean, given that the die
 * has outlived what is used; safe ends at 0.9, likely ends at 0.5.
 * Tolerance: half of the last printed digit (0.005) and three standard errors of a stratified share over 8,192 draws
 * (one tool: below 0.001; sums of several: below 3·√(0.25/8192) = 0.017).
 */
const DRAWS = 8192;
const ONE_TOOL = 0.006;

function answer(
  die: { mean: number; used: number },
  lines: Partial<PlanLine>[],
  { factor = 1, arrivals = [] }: { factor?: number; arrivals?: Arrival[] } = {},
) {
  const draws = statedDraws({
    drawCount: DRAWS,
    tools: { DIE: die, BLADE: 1e9 },
    parts: { 'part-die': { mean: die.mean, used: 0 } },
    factors: { M: factor },
  });
  const follow = lines.map((change, i) => {
    const [startOnDay, dueOnDay] = [`2026-04-${String(10 + 2 * i)}`, `2026-04-${String(11 + 2 * i)}`];
    return planLine({ lineId: `L${i}`, startOnDay, dueOnDay, ...change });
  });
  return checkPlan(plan({ lines: follow, items: completeSet(), draws, arrivals }));
}

function ends(endsToMake: number, turnsPerEnd: number): Partial<PlanLine> {
  return { endsToMake, exposurePerEnd: { cone: 1, thread: turnsPerEnd } };
}

// source: formula. P = S(used + need) / S(used) of the stated normal; figures as printed among the worked figures of the
// trade sheet, to two digits.
describe('worked figures of the trade sheet', () => {
  it('scenario 1: thirteen ends left, the other die used 1,300 of 1,300: 0.73, 4 safe, 25 likely', () => {
    const [line] = answer({ mean: 1300, used: 1300 }, [ends(13, 10.5)]);
    expect(Math.abs((line?.pMade ?? 0) - 0.73)).toBeLessThan(ONE_TOOL);
    expect(line).toMatchObject({ verdict: 'at-risk', safeEnds: 4, likelyEnds: 25 });
  });

  it('scenario 3: one die, used 600 of 1,200: job 41 at 0.63, both jobs at 0.24', () => {
    const [job41, job44] = answer({ mean: 1200, used: 600 }, [ends(30, 506 / 30), ends(40, 9)]);
    expect(Math.abs((job41?.pMade ?? 0) - 0.63)).toBeLessThan(ONE_TOOL);
    expect(Math.abs((job44?.pMade ?? 0) - 0.24)).toBeLessThan(ONE_TOOL);
    expect(job41).toMatchObject({ verdict: 'at-risk', safeEnds: 12, limitingRole: 'die' });
    expect(job44?.verdict).toBe('cannot-make-now');
    const [medium] = answer({ mean: 1200, used: 600 }, [ends(40, 9)]);
    expect(medium?.safeEnds).toBe(23);
  });

  it('scenario 7: 120 ends of 2507 at 2,835 turns: three dies 0.89, four 0.997', () => {
    const orders = (quantity: number) => [arrival('die', { quantity, expectedOnDay: '2026-03-20' })];
    const three = answer({ mean: 1200, used: 0 }, [ends(120, 9 * 1.05)], {
      factor: 2.5,
      arrivals: orders(2),
    });
    const four = answer({ mean: 1200, used: 0 }, [ends(120, 9 * 1.05)], { factor: 2.5, arrivals: orders(3) });
    expect(Math.abs((three[0]?.pMade ?? 0) - 0.89)).toBeLessThan(0.005 + 0.011);
    expect(Math.abs((four[0]?.pMade ?? 0) - 0.997)).toBeLessThan(0.003);
    expect(four[0]?.verdict).toBe('can-make');
  });

  it('scenario 12: twenty ends on a die used 800 of 1,400: 0.81, 12 safe, 40 likely', () => {
    const [line] = answer({ mean: 1400, used: 800 }, [ends(20, 15.75)]);
    expect(Math.abs((line?.pMade ?? 0) - 0.81)).toBeLessThan(ONE_TOOL);
    expect(line).toMatchObject({ verdict: 'at-risk', safeEnds: 12, likelyEnds: 40 });
  });

  it.each([
    [0, 76, 123],
    [300, 48, 95],
    [600, 25, 68],
    [900, 11, 45],
    [1100, 7, 33],
    [1300, 4, 25],
    [1500, 3, 19],
  ])(
    'a die of 1,300 turns, used %d: %d safe, %d likely at 10.5 turns an end',
    (used, safeEnds, likelyEnds) => {
      const [line] = answer({ mean: 1300, used }, [ends(1, 10.5)]);
      expect(line).toMatchObject({ safeEnds, likelyEnds });
    },
  );

  it('the opening page: used 430, 24 ends 0.96, then 40 more 0.70', () => {
    const [first, both] = answer({ mean: 1300, used: 430 }, [ends(24, 10.5), ends(40, 10.5)]);
    expect(Math.abs((first?.pMade ?? 0) - 0.96)).toBeLessThan(ONE_TOOL);
    expect(Math.abs((both?.pMade ?? 0) - 0.7)).toBeLessThan(ONE_TOOL);
    expect(first).toMatchObject({ verdict: 'can-make', safeEnds: 37, likelyEnds: 83 });
  });
});

// source: formula. S(used + need) / S(used) of the normal, over a table of uses and needs.
it('one die: P(line made) is the conditional survival of the stated life', () => {
  for (const used of [0, 400, 800, 1200]) {
    for (const endsToMake of [5, 20, 60, 100]) {
      const survival = (turns: number) => normalCdf((1300 - turns) / 390);
      const expected = survival(used + endsToMake * 10.5) / survival(used);
      const [line] = answer({ mean: 1300, used }, [ends(endsToMake, 10.5)]);
      expect(Math.abs((line?.pMade ?? 0) - expected)).toBeLessThan(1.5 / DRAWS);
    }
  }
});
