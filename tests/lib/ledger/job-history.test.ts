import { expect, it } from 'vitest';
import { evolveJob } from '@/lib/ledger/job-history';
import { must, sentence } from '../../support/db';
import { entry } from '../../support/entry';

const line = {
  ...{ lineNo: 1, connectionId: '9-16-high', materialId: '316', heat: '', ends: 20 },
  ...{
    operations: ['thread' as const],
    startOnDay: '2026-03-09',
    dueOnDay: '2026-03-13',
    value: 'ordinary' as const,
  },
};
const set = (...lines: (typeof line)[]) => entry('job-set', 'J-1', { id: 'J-1', title: '', lines });
const closed = entry('job-closed', 'J-1', { how: 'done' });

it('open when set, closed when done, open again when set again', () => {
  const open = must(evolveJob(undefined, set(line)));
  const done = must(evolveJob(open, closed));
  expect([open.status, done.status, must(evolveJob(done, set(line))).status]).toEqual([
    'open',
    'done',
    'open',
  ]);
});

it('refuses doubled lines, closing what is not there or not open, and entries about something else', () => {
  const done = must(evolveJob(must(evolveJob(undefined, set(line))), closed));
  expect([
    sentence(evolveJob(undefined, set(line, line))),
    sentence(evolveJob(undefined, closed)),
    sentence(evolveJob(done, closed)),
    sentence(evolveJob(done, entry('tool-returned', 'J-1', { condition: 'ok' }))),
  ]).toEqual([
    'Job J-1 has the same line number twice.',
    'No job J-1 is in the record.',
    'Job J-1 is already done.',
    'An entry "tool-returned" cannot be about a job.',
  ]);
});

// source: published. Oxygen cleaning and its proof are by the approved procedure (ASTM G93/G93M); the hold is stated.
it('Q22: an oxygen line holds the job until its cleaning is written down', () => {
  const cleaned = entry('line-cleaned', 'J-1', {
    ...{ lineNo: 1, procedure: 'CL-4 rev 2', onDay: '2026-03-12', evidence: 'record 17' },
  });
  const open = must(evolveJob(undefined, set({ ...line, duty: 'oxygen' } as typeof line)));
  const shipped = entry('job-shipped', 'J-1', { onDay: '2026-03-13' });
  expect(sentence(evolveJob(open, closed))).toContain('held until its cleaning is written down');
  expect(sentence(evolveJob(open, shipped))).toContain('oxygen service');
  expect(must(evolveJob(open, entry('job-closed', 'J-1', { how: 'cancelled' }))).status).toBe('cancelled');
  const written = must(evolveJob(open, cleaned));
  expect(must(evolveJob(written, closed)).status).toBe('done');
  expect(must(evolveJob(written, set({ ...line, duty: 'oxygen' } as typeof line))).cleanings).toHaveLength(1);
  expect(
    sentence(evolveJob(open, entry('line-cleaned', 'J-1', { ...cleaned.payload, lineNo: 2 } as never))),
  ).toBe('Job J-1 has no line 2.');
});

// source: hand. What was cleaned was that tube for that duty; another tube, or another duty, has not been cleaned.
it('a cleaning stands while its line is the same work, and no longer', () => {
  const cleaning = { lineNo: 1, procedure: 'CP-7', onDay: '2026-03-10', evidence: 'sheet 4' };
  const cleaned = must(
    evolveJob(must(evolveJob(undefined, set(line))), entry('line-cleaned', 'J-1', cleaning)),
  );
  const kept = (over: object) => must(evolveJob(cleaned, set({ ...line, ...over }))).cleanings.length;
  expect([kept({}), kept({ ends: 30, dueOnDay: '2026-04-01' })]).toEqual([1, 1]);
  expect([
    kept({ duty: 'oxygen' }),
    kept({ materialId: '2507' }),
    kept({ connectionId: '1-4-medium' }),
  ]).toEqual([0, 0, 0]);
});
