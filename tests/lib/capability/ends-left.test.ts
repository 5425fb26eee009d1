import { expect, it } from 'vitest';
import { endsAtConfidence, lesserEnds, shareAtLeast, wholeEnds } from '@/lib/capability/ends-left';

// source: hand. 252 ÷ 10.5 = 24; 251 ÷ 10.5 = 23.9; 252 ÷ (10.5·2.5) = 9.6. 0.7 + 0.1 three times over 0.1 is 10.
it('wholeEnds counts ends that are finished, and forgives the last digit', () => {
  const capacity = Float64Array.of(252, 251, 252, 0);
  expect([...wholeEnds(capacity, 10.5, Float64Array.of(1, 1, 2.5, 1))]).toEqual([24, 23, 9, 0]);
  expect([...wholeEnds(Float64Array.of(0.7 + 0.1 + 0.1 + 0.1), 0.1, Float64Array.of(1))]).toEqual([10]);
});

const ends = Float64Array.of(9, 3, 7, 1, 5, 10, 2, 8, 6, 4);

// source: hand. Ten draws holding 1 to 10 once each.
it('shareAtLeast and endsAtConfidence count the same thing from both sides', () => {
  expect([1, 2, 6, 10, 11].map((n) => shareAtLeast(ends, n))).toEqual([1, 0.9, 0.5, 0.1, 0]);
  expect(endsAtConfidence(ends, [1, 0.9, 0.85, 0.5, 0.1])).toEqual([1, 2, 2, 6, 10]);
  expect(ends[0]).toBe(9);
});

// source: hand.
it('lesserEnds takes the smaller in every draw', () => {
  expect([...lesserEnds(Float64Array.of(1, 5), Float64Array.of(2, 4))]).toEqual([1, 4]);
});
