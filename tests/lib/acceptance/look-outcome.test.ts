import { expect, it } from 'vitest';
import { lookOutcome } from '@/lib/acceptance/look-outcome';

// source: hand. TRADE Q17: an end with no gauge recorded is not releasable, and so has not passed.
it('is passed only with every gauge recorded', () => {
  expect(lookOutcome({ decision: 'accepted', gaugesMissing: [] })).toBe('passed');
  expect(lookOutcome({ decision: 'accepted', gaugesMissing: ['not-go-ring'] })).toBe('not-gauged');
  for (const gaugesMissing of [[], ['go-ring' as const]])
    expect(lookOutcome({ decision: 'refused', gaugesMissing })).toBe('refused');
});
