import { expect, it } from 'vitest';
import { compareDueDates, type DueDate } from '@/lib/due-dates/due-date';

const at = (id: string, onDay: string, kind: 'job-start' | 'job-due'): DueDate => ({
  ...{ id, onDay, kind, jobId: 'J', lineId: 'J.1', connectionId: 'S', ends: 1 },
});

// source: hand. By day, what is due before what starts, then by name.
it('orders by day, kind and name', () => {
  const dues = [
    at('c', '2026-03-03', 'job-start'),
    at('b', '2026-03-03', 'job-due'),
    at('a', '2026-03-03', 'job-due'),
    at('d', '2026-03-02', 'job-start'),
  ];
  expect(dues.sort(compareDueDates).map(({ id }) => id)).toEqual(['d', 'a', 'b', 'c']);
});
