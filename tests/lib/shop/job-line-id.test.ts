import fc from 'fast-check';
import { expect, it } from 'vitest';
import { jobLineId } from '@/lib/shop/job-line-id';

it('is the job number and the line number', () => {
  expect(jobLineId('J-086', 2)).toBe('J-086.2');
});

// source: identity. The line number holds no dot, so the last dot parts the two.
it('two lines of any two jobs never share an ID', () => {
  const job = fc.stringMatching(/^[A-Z0-9][A-Z0-9.-]{0,6}$/);
  const line = fc.integer({ min: 1, max: 999 });
  fc.assert(
    fc.property(job, line, job, line, (a, i, b, j) => {
      expect(jobLineId(a, i) === jobLineId(b, j)).toBe(a === b && i === j);
    }),
  );
});
