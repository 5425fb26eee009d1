import type { ImportColumn } from './column';
import { WORK_COLUMNS } from './work-columns';

/** The columns of a cuts file: one row is one row of the cut log, so many ends of one size in one material. */
export const CUT_COLUMNS = [
  {
    key: 'entry_id',
    also: ['entry', 'row id', 'record id'],
    required: false,
    help: 'The row’s own ID, 8 to 64 characters, where it has one. Without it rows are known again by what they say.',
    example: '',
  },
  {
    key: 'tool_id',
    also: ['tool', 'id', 'mark', 'die', 'blade', 'tool number', 'tool no'],
    required: true,
    help: 'The mark of the die or blade it was cut with.',
    example: 'D-56-14',
  },
  {
    key: 'cut_on',
    also: ['date', 'day', 'cut date', 'date cut', 'on'],
    required: true,
    help: 'The day it was cut, YYYY-MM-DD.',
    example: '2026-03-14',
  },
  ...WORK_COLUMNS,
  {
    key: 'heat',
    also: ['heat number', 'heat no', 'cast'],
    required: false,
    help: 'The tube’s heat number.',
    example: 'H4471',
  },
  {
    key: 'ends',
    also: ['cones', 'threads', 'ends cut', 'count', 'qty', 'quantity', 'pieces'],
    required: true,
    help: 'How many ends were cut, good or not.',
    example: '12',
  },
  {
    key: 'good_ends',
    also: ['good', 'accepted', 'ok', 'good cones', 'good threads', 'accepted ends'],
    required: false,
    help: 'How many of them were good. Empty: all but the rejects.',
    example: '11',
  },
  {
    key: 'thread_length',
    also: ['length', 'thread len'],
    required: false,
    help: 'The thread length where it differs from the connection’s own, with its unit here or in the next column.',
    example: '23.8',
  },
  {
    key: 'thread_length_unit',
    also: ['length unit', 'unit', 'units'],
    required: false,
    help: 'mm or in.',
    example: 'mm',
  },
  {
    key: 'dry',
    also: ['cut dry', 'no fluid'],
    required: false,
    help: 'yes if cut without fluid.',
    example: 'no',
  },
  {
    key: 'rework',
    also: ['recut', 'reworked', 'chased'],
    required: false,
    help: 'yes if an end already cut was cut again.',
    example: 'no',
  },
  {
    key: 'job',
    also: ['job line', 'job number', 'job no', 'order', 'work order'],
    required: false,
    help: 'The job, or the job line as J-086.2.',
    example: 'J-086.2',
  },
  {
    key: 'by',
    also: ['person', 'who', 'name', 'technician', 'operator', 'cut by'],
    required: false,
    help: 'Who cut it.',
    example: '',
  },
  {
    key: 'rejects',
    also: ['reject causes', 'reject cause', 'scrap causes', 'rejected'],
    required: false,
    help: 'Rejects by cause with their counts: torn-thread: 1; length: 2.',
    example: 'torn-thread: 1',
  },
  {
    key: 'edge_ended',
    also: ['edge end', 'ended', 'end of life', 'tool ended', 'life ended'],
    required: false,
    help: 'If the edge was taken out of service after this row: worn, dropped, chipped early … A blade that came back: reground, or worn, reground.',
    example: '',
  },
  {
    key: 'reversed',
    also: ['taken back', 'void', 'cancelled'],
    required: false,
    help: 'yes for a row that was taken back; such rows are left out.',
    example: '',
  },
] as const satisfies readonly ImportColumn[];
export type CutColumn = (typeof CUT_COLUMNS)[number]['key'];
