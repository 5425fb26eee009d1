import { expect, it } from 'vitest';
import { faultMeaning } from '@/lib/recall/fault-meaning';

// source: published. ASME B1.2 as quoted in gauging notes: GO is the largest thread that may pass, NOT GO the smallest.
it.each([
  ['go-ring', 'large', 'oversize-passed', 2],
  ['go-ring', 'small', 'false-refusals', 3],
  ['not-go-ring', 'small', 'undersize-passed', 1],
  ['not-go-ring', 'large', 'false-refusals', 3],
  ['not-go-ring', 'unknown', 'undersize-passed', 1],
  ['cone-gauge', 'large', 'wrong-cone-passed', 2],
  ['length-gauge', 'small', 'wrong-length-passed', 2],
  ['micrometer', 'large', 'unknown', 1],
] as const)('a %s that is %s: %s', (role, direction, effect, urgency) => {
  expect(faultMeaning({ role, direction })).toMatchObject({ effect, urgency });
});

// source: formula. A limit gauge of diameter g passes what fits it. Thread limits 5.00 to 5.10, ring off by 0.02 either way:
// simulated over a grid of thread diameters, what slips through is what the meaning says.
it('agrees with limit gauging worked out on a grid of threads', () => {
  const [low, high, off] = [500, 510, 2];
  const sizes = Array.from({ length: 61 }, (_, n) => 475 + n);
  const accepted = (goMax: number, notGoMin: number) =>
    sizes.filter((size) => size <= goMax && size > notGoMin);
  const wrong = (list: number[]) => ({
    over: list.some((size) => size > high),
    under: list.some((size) => size <= low),
  });
  expect(wrong(accepted(high, low))).toEqual({ over: false, under: false });
  expect(wrong(accepted(high + off, low)).over).toBe(true);
  expect(wrong(accepted(high, low - off)).under).toBe(true);
  expect(wrong(accepted(high - off, low + off))).toEqual({ over: false, under: false });
});

it('says in words which ends to look at first', () => {
  expect(faultMeaning({ role: 'not-go-ring', direction: 'small' }).sentence).toMatch(/weak joint.*first/);
  expect(faultMeaning({ role: 'go-ring', direction: 'large' }).sentence).toMatch(/collar/);
});
