import { describe, expect, it } from 'vitest';
import { readJobRow } from '@/lib/import/read-job-row';
import { RowReader } from '@/lib/import/row-reader';

function read(cells: Record<string, string>) {
  const places = new Map(Object.keys(cells).map((key, at) => [key, { at, header: key }]));
  const reader = new RowReader(5, Object.values(cells), places);
  const row = readJobRow(reader);
  return { row, columns: reader.errors.map((error) => error.column) };
}

const LINE = {
  job: 'J-086',
  size: '1',
  service: 'high',
  material: '2507',
  ends: '24',
  cone: 'yes',
  thread: 'x',
  assemble: '',
  start_on: '2026-04-06',
  due_on: '2026-04-17',
};

describe('readJobRow', () => {
  it('reads a line', () => {
    expect(read(LINE).row).toEqual({
      rowNo: 5,
      job: 'J-086',
      title: '',
      line: null,
      size: { num: 1, den: 1 },
      service: 'high',
      material: '2507',
      heat: '',
      ends: 24,
      operations: ['cone', 'thread'],
      startOnDay: '2026-04-06',
      dueOnDay: '2026-04-17',
      value: 'ordinary',
      status: 'open',
    });
  });

  it.each([
    ['job', 'J 086'],
    ['line', '0'],
    ['ends', '100001'],
    ['cone', 'sometimes'],
    ['start_on', '6.4.2026'],
    ['due_on', '2026-04-05'],
    ['value', 'dear'],
    ['status', 'late'],
  ])('refuses %s %j under that column', (column, cell) => {
    expect(read({ ...LINE, [column]: cell })).toEqual({ row: undefined, columns: [column] });
  });

  it('needs at least one thing to be done', () => {
    expect(read({ ...LINE, cone: 'no', thread: '' }).columns).toEqual(['cone']);
  });
});
