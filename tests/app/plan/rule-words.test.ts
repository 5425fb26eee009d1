import { expect, it } from 'vitest';
import { breakEvenWords, cheaperWords, savedSentence } from '@/app/plan/costs/_parts/rule-words';

// source: hand. What the screen must never do: claim a saving that chance could have made, or hide that the count was cheaper.
it('claims a saving only where so many edges can tell', () => {
  const of = (savedMinor: number, cheaper: 'predicted' | 'fixed' | 'not-told') =>
    savedSentence({ savedMinor, errorMinor: 10_000, cheaper }, 'USD');
  expect(of(50_000, 'predicted')).toContain('would have saved about $500');
  expect(of(-50_000, 'fixed')).toContain('the fixed count was cheaper');
  expect(of(5_000, 'not-told')).toContain('Nothing to choose');
  expect(of(5_000, 'not-told')).toContain('$50 less, give or take $100');
  expect(of(-5_000, 'not-told')).toContain('$50 more');
});

// source: hand. No edge has been changed by either rule; both did the same; a difference that is noise.
it('says what one part tells', () => {
  expect(cheaperWords({ savedMinor: null, cheaper: 'not-told' })).toBe('nothing changed yet');
  expect(cheaperWords({ savedMinor: 0, cheaper: 'not-told' })).toBe('the same');
  expect(cheaperWords({ savedMinor: 10, cheaper: 'not-told' })).toBe('too close to tell');
  expect(cheaperWords({ savedMinor: -10, cheaper: 'fixed' })).toBe('the count');
});

// source: hand. Work of 20 against 50 more for a failure: 40/(40 + 20), two in three; work dearer than twice the failure: never.
it('says below which chance an edge is changed first', () => {
  expect(breakEvenWords({ workEnds: 10, workMinor: 2_000, extraMinor: 5_000 })).toBe('about 7 in 10');
  expect(breakEvenWords({ workEnds: 90, workMinor: 11_000, extraMinor: 5_000 })).toContain('never');
});
