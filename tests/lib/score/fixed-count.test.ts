import { expect, it } from 'vitest';
import { fixedCountSays } from '@/lib/score/fixed-count';

// source: hand. Changed at 120 ends: 96 + 24 is just within, 97 + 24 is not.
it('says yes up to the count and no beyond it', () => {
  expect(fixedCountSays({ usedEnds: 96, jobEnds: 24, changeAtEnds: 120 })).toBe(1);
  expect(fixedCountSays({ usedEnds: 97, jobEnds: 24, changeAtEnds: 120 })).toBe(0);
});
