import fc from 'fast-check';
import { expect, it } from 'vitest';
import { jobOrders, playOrder } from '@/lib/issue-order/job-order';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';
import { scattered, sure, task } from '../../support/edge-tasks';

// source: hand. 30 ends of life, lines of 25 and 10: the short one first finishes 1, so does the long one; both never. With 20 left
// only the short one can be finished, whichever comes first on the plan.
it('counts the lines that are finished', () => {
  const [long, short] = [task('long', { ends: 25 }), task('short', { ends: 10 })];
  expect(playOrder([long, short], sure('A', 30).life)).toMatchObject({ finished: 1, probabilities: [1, 0] });
  expect(playOrder([long, short], sure('A', 20).life).finished).toBe(0);
  expect(jobOrders([long, short], sure('A', 20).life)[0]).toMatchObject({
    lineIds: ['short', 'long'],
    finished: 1,
  });
});

// source: formula. Exchange argument: with the same cost per end, shortest first finishes at least as many lines in every future.
it('shortest first is never beaten where all ends cost the same', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 5 }),
      fc.integer({ min: 5, max: 120 }),
      (sizes, mean) => {
        const tasks = sizes.map((ends, i) => task(`L${i}`, { ends }));
        const { life } = scattered('A', mean);
        const sorted = [...tasks].sort((a, b) => a.ends - b.ends);
        expect(jobOrders(tasks, life)[0]?.finished).toBeCloseTo(playOrder(sorted, life).finished, 12);
      },
    ),
  );
});

// source: hand. More than six lines: the plan's order and shortest first are compared.
it('compares two orders where there are many lines', () => {
  const tasks = Array.from({ length: 8 }, (_, i) => task(`L${i}`, { ends: 8 - i }));
  const orders = jobOrders(tasks, sure('A', 15).life);
  expect(orders).toHaveLength(2);
  expect(orders[0]).toMatchObject({ finished: 5, lineIds: ['L7', 'L6', 'L5', 'L4', 'L3', 'L2', 'L1', 'L0'] });
});

/** The trade's worked life: normal, mean 1200 turns, sd 360, in even strata, given that the die has got to 600. */
function worked(draws: number): Float64Array {
  const low = normalCdf((600 - 1200) / 360);
  return Float64Array.from({ length: draws }, (_, k) => {
    const share = low + (1 - low) * ((k + 0.5) / draws);
    return 1200 + 360 * normalQuantile(share) - 600;
  });
}

// source: published. The trade's worked example: die used 600 of a mean of 1200, sd 0.3 of it; job 41 506 turns, job 44 360 turns:
// P(41) = 0.63, P(both) = 0.24. Which order finishes more is then arithmetic: 44 first, by 0.785 + 0.24 against 0.63 + 0.24.
it('Q3: the order of jobs that finishes most while the dies are late', () => {
  const draws = 4000;
  const each = (turns: number) => new Float64Array(draws).fill(turns);
  const job41 = task('41', { ends: 30, perEnd: each(506 / 30) });
  const job44 = task('44', {
    ends: 40,
    perEnd: each(360 / 40),
    startOnDay: '2026-12-07',
    dueOnDay: '2026-12-11',
  });
  const life = worked(draws);
  const inTurn = playOrder([job41, job44], life);
  expect(inTurn.probabilities[0]).toBeCloseTo(0.63, 2);
  expect(inTurn.probabilities[1]).toBeCloseTo(0.24, 2);
  const [best] = jobOrders([job41, job44], life);
  expect(best?.lineIds).toEqual(['44', '41']);
  const alone = normalCdf((1200 - 960) / 360) / normalCdf((1200 - 600) / 360);
  expect(best?.probabilities[0]).toBeCloseTo(alone, 3);
});
