import { expect, it } from 'vitest';
import { dueBand, dueHref, dueShort, dueTitle } from '@/app/_shared/words/due-words';
import type { DueDate } from '@/lib/due-dates/due-date';

const job: DueDate = {
  ...{ id: 'job-due.J-8.1', kind: 'job-due', onDay: '2026-12-04', jobId: 'J-8', lineId: 'J-8.1' },
  ...{ connectionId: '9-16-high', ends: 20 },
};
const change: DueDate = {
  ...{
    id: 'replacement.D-1',
    kind: 'replacement',
    onDay: '2026-12-09',
    toolId: 'D-1',
    role: 'die',
    partName: '3⁄8 die',
  },
  ...{ planned: true, band: { lowDay: '2026-12-01', highDay: null } },
};

// source: hand. In full, in short for a square of the calendar, and where it leads.
it('names what is due', () => {
  expect(dueTitle(job)).toBe('Job J-8 due: 20 ends, 9⁄16 in high pressure');
  expect(dueShort(job)).toBe('J-8 due');
  expect(dueHref(job)).toBe('/plan/lines/J-8.1');
  expect(dueTitle(change)).toBe('Change D-1, 3⁄8 die');
  expect(dueTitle({ ...change, planned: false })).toBe('D-1 wears out, 3⁄8 die');
  expect(dueHref(change)).toBe('/tools/D-1');
});

// source: hand. Only an estimate has a band.
it('says how sure the day is', () => {
  expect(dueBand(job, '2026-11-25')).toBe('');
  expect(dueBand(change, '2026-11-25')).toBe('an estimate: between Tue 1 Dec and no end in sight');
});
