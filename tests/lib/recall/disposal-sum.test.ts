import { expect, it } from 'vitest';
import { sumDisposals } from '@/lib/recall/disposal-sum';

// source: hand. 141 ends: 96 cleared by a blue check, 43 gauged again good, 2 made again.
it('sums what was decided by look: open, good after all, gone', () => {
  const decided = (how: 'cleared-otherwise' | 'regauged-good' | 'reworked', endCount: number) => ({
    ...{ acceptanceId: 'a', how, endCount },
  });
  const sums = sumDisposals({
    suspects: [
      { acceptanceId: 'a', endCount: 141 },
      { acceptanceId: 'b', endCount: 4 },
    ],
    disposals: [
      ...[decided('cleared-otherwise', 96), decided('regauged-good', 43), decided('reworked', 2)],
      { acceptanceId: 'b', how: 'customer-told', endCount: 1 },
    ],
  });
  expect(sums.get('a')).toEqual({ endCount: 141, open: 0, good: 139, gone: 2 });
  expect(sums.get('b')).toEqual({ endCount: 4, open: 3, good: 1, gone: 0 });
});
