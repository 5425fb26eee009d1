import type { ImportColumn } from './column';
import { WORK_COLUMNS } from './work-columns';

/** The columns of a jobs file: one row is one line of a job; all rows of a job together are the job. */
export const JOB_COLUMNS = [
  {
    key: 'job',
    also: ['job number', 'job no', 'job id', 'order', 'work order'],
    required: true,
    help: 'The job number: letters, figures, dashes and dots.',
    example: 'J-086',
  },
  {
    key: 'title',
    also: ['job title', 'description', 'job name', 'name'],
    required: false,
    help: 'What the job is for. Enough on one of its rows.',
    example: 'Test bench manifold',
  },
  {
    key: 'line',
    also: ['line no', 'line number', 'job line', 'item', 'pos', 'position'],
    required: false,
    help: 'The line number. Empty on every row of a job: 1, 2, 3 in the order of the rows.',
    example: '1',
  },
  ...WORK_COLUMNS,
  {
    key: 'heat',
    also: ['heat number', 'heat no', 'cast'],
    required: false,
    help: 'The tube’s heat number, where it is known.',
    example: '',
  },
  {
    key: 'ends',
    also: ['cones', 'threads', 'count', 'qty', 'quantity', 'pieces', 'number of ends'],
    required: true,
    help: 'How many ends.',
    example: '24',
  },
  {
    key: 'cone',
    also: ['coning', 'coned'],
    required: false,
    help: 'yes if the ends are coned.',
    example: 'yes',
  },
  {
    key: 'thread',
    also: ['threading', 'threaded'],
    required: false,
    help: 'yes if the ends are threaded.',
    example: 'yes',
  },
  {
    key: 'assemble',
    also: ['assembly', 'assembled', 'torque'],
    required: false,
    help: 'yes if the joints are assembled here.',
    example: 'no',
  },
  {
    key: 'start_on',
    also: ['start', 'start date', 'begin', 'from'],
    required: true,
    help: 'The first day of cutting, YYYY-MM-DD.',
    example: '2026-04-06',
  },
  {
    key: 'due_on',
    also: ['due', 'due date', 'finish', 'to', 'needed by', 'deadline'],
    required: true,
    help: 'The day it must be done, YYYY-MM-DD.',
    example: '2026-04-17',
  },
  {
    key: 'value',
    also: ['job value', 'worth'],
    required: false,
    help: 'precious for tube that cannot be remade; otherwise ordinary or empty.',
    example: 'ordinary',
  },
  {
    key: 'status',
    also: ['job status', 'state'],
    required: false,
    help: 'done or cancelled for a job that is closed; otherwise open or empty. Read for new jobs only.',
    example: 'open',
  },
] as const satisfies readonly ImportColumn[];
export type JobColumn = (typeof JOB_COLUMNS)[number]['key'];
