import { expect, it } from 'vitest';
import { acceptedBeyondCut } from '@/lib/acceptance/cut-against-accepted';

// source: hand. Twenty cones, eighteen threads: no more than eighteen can be accepted.
it('says where more ends are accepted than were cut good', () => {
  const line = { operations: ['cone', 'thread'], goodCones: 20, goodThreads: 18 } as const;
  expect(acceptedBeyondCut({ ...line, acceptedEnds: 20 })).toBe(2);
  expect(acceptedBeyondCut({ ...line, acceptedEnds: 18 })).toBeUndefined();
  expect(acceptedBeyondCut({ ...line, operations: ['cone'], acceptedEnds: 20 })).toBeUndefined();
  expect(acceptedBeyondCut({ ...line, operations: ['assemble'], acceptedEnds: 20 })).toBeUndefined();
});
