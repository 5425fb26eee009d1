import { expect, it } from 'vitest';
import { edgeAnswer } from '@/lib/bench/edge-answer';
import { surelyMore, thinnedEnds } from '@/lib/bench/finish-chance';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';

/**
 * Ends left of an edge by the stated life of the trade sheet: normal, standard deviation 0.3 of the mean, given that it has
 * outlived what is used.
 */
function statedLeft({ mean, used, perEnd }: { mean: number; used: number; perEnd: number }): number[] {
  const sd = 0.3 * mean;
  const below = normalCdf((used - mean) / sd);
  const draws = Array.from({ length: 8192 }, (_, i) => {
    const p = below + (1 - below) * ((i + 0.5) / 8192);
    return (mean + sd * normalQuantile(p) - used) / perEnd;
  });
  return draws;
}

/** The same as the device keeps them: 512 points, so that a chance is right to 1 in 512. */
const kept = (of: Parameters<typeof statedLeft>[0]) => thinnedEnds(statedLeft(of));

// source: published. The trade sheet's worked figures for 40 ends of 10.5 turns moved from one die of 1,300 turns to another.
it.each([
  ['the die that was logged, wrongly at 920', 920, 10],
  ['the same, put right at 500', 500, 32],
  ['the die that cut them, as it stood at 700', 700, 19],
  ['the same, put right at 1,120', 1120, 6],
])('Q4: %s turns: its safe ends at the bench', (_which, used, safeEnds) => {
  const left = statedLeft({ mean: 1300, used, perEnd: 10.5 });
  expect(surelyMore(left, 0, 0.9)).toBe(safeEnds);
});

// source: published. The same ten ends of the trade sheet: forty ends counted at the bench are forty ends in the record.
it('Q4: ends counted at the bench take as much off as ends in the record', () => {
  const counted = surelyMore(statedLeft({ mean: 1300, used: 500, perEnd: 10.5 }), 40, 0.9);
  expect(counted).toBe(10);
});

// source: published. The trade sheet: used 800 of 1,400, twenty ends of 15.75 turns: 0.81, 12 safe, 40 likely.
it('Q12: twenty ends 1⁄4 high pressure on a die used 800 of 1,400: go with a standby', () => {
  const edge = { left: kept({ mean: 1400, used: 800, perEnd: 15.75 }), endsToCut: 20 };
  const answer = edgeAnswer(edge, [], 0.9);
  expect(answer.chance).toBeCloseTo(0.81, 2);
  expect(answer).toMatchObject({ safeEnds: 12, likelyEnds: 40, verdict: 'go-with-standby', endsToCut: 20 });
});
