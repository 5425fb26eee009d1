import { ok, type Result, refuse } from '../result';
import { OPERATIONS, type Operation, type Service } from '../shop/vocabulary';
import type { Rational } from '../units/rational';
import {
  quoteCell,
  readCountCell,
  readDayCell,
  readSizeCell,
  readWordCell,
  readYesNoCell,
} from './cell-value';
import { readServiceCell } from './read-tool-row';
import type { RowReader } from './row-reader';
import { STATUS_WORDS, VALUE_WORDS } from './word-list';

/** One row of a jobs file as it was meant: one line of a job. */
export interface JobRow {
  readonly rowNo: number;
  readonly job: string;
  readonly title: string;
  readonly line: number | null;
  readonly size: Rational;
  readonly service: Service;
  readonly material: string;
  readonly heat: string;
  readonly ends: number;
  readonly operations: readonly Operation[];
  readonly startOnDay: string;
  readonly dueOnDay: string;
  readonly value: 'ordinary' | 'precious';
  readonly status: 'open' | 'done' | 'cancelled';
}

/** Reads one row of a jobs file; undefined when the reader has noted errors. */
export function readJobRow(row: RowReader): JobRow | undefined {
  const job = row.needed('job', readJobIdCell);
  const size = row.needed('size', readSizeCell);
  const service = row.needed('service', readServiceCell);
  const material = row.needed('material', (text) => ok(text));
  const ends = row.needed('ends', (text) => readCountCell(text, { min: 1, max: 100_000 }));
  const startOnDay = row.needed('start_on', readDayCell);
  const dueOnDay = row.needed('due_on', readDayCell);
  const rest = {
    title: row.text('title', 120),
    line: row.optional('line', (text) => readCountCell(text, { min: 1, max: 999 })),
    heat: row.text('heat', 40),
    operations: OPERATIONS.filter((operation) => row.optional(operation, readYesNoCell) ?? false),
    value:
      row.optional('value', (text) => readWordCell(text, VALUE_WORDS, 'ordinary or precious')) ?? 'ordinary',
    status:
      row.optional('status', (text) => readWordCell(text, STATUS_WORDS, 'open, done or cancelled')) ?? 'open',
  } as const;
  if (startOnDay !== null && dueOnDay !== null && dueOnDay < startOnDay)
    row.refuse('due_on', 'The due day lies before the start day.');
  if (rest.operations.length === 0 && row.errors.length === 0)
    row.refuse('cone', 'Say what is done: yes under cone, thread or assemble.');
  if (row.errors.length > 0 || job === null || size === null || service === null) return undefined;
  if (material === null || ends === null || startOnDay === null || dueOnDay === null) return undefined;
  return { rowNo: row.rowNo, job, size, service, material, ends, startOnDay, dueOnDay, ...rest };
}

function readJobIdCell(text: string): Result<string> {
  return /^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/.test(text)
    ? ok(text)
    : refuse(
        'job',
        `${quoteCell(text)} cannot be a job number: letters, figures, dashes or dots, at most 64, no spaces.`,
      );
}
