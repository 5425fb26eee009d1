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
