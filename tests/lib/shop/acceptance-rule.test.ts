import { expect, it } from 'vitest';
import { AcceptanceRuleSchema } from '@/lib/shop/acceptance-rule';

// source: hand. What a rule needs to be one.
it('a rule says whose it is; the exposed threads are one to two unless it says more', () => {
  expect(AcceptanceRuleSchema.parse({ notGoTurnsMax: 2, whose: ' drawing 4471 ' })).toEqual({
    ...{ notGoTurnsMax: 2, whose: 'drawing 4471', exposedThreadsMin: 1, exposedThreadsMax: 2 },
  });
  const refused = (over: object) =>
    AcceptanceRuleSchema.safeParse({ notGoTurnsMax: 2, whose: 'x', ...over }).success;
  expect(refused({ whose: '' })).toBe(false);
  expect(refused({ notGoTurnsMax: 11 })).toBe(false);
  expect(refused({ exposedThreadsMin: 3, exposedThreadsMax: 2 })).toBe(false);
});
