import { describe, expect, it } from 'vitest';
import { matchColumns } from '@/lib/import/match-columns';
import { checkTable, ERRORS_LISTED, type ReadFile, readRows } from '@/lib/import/read-rows';

const HEADER = ['tool_id', 'kind', 'note'];
const MAPPING = matchColumns('tools', HEADER).mapping;

function readAll(rows: string[][], header = HEADER): { file: ReadFile; steps: number[] } {
  const reading = readRows('tools', { header, rows }, MAPPING);
  const steps: number[] = [];
  for (;;) {
    const step = reading.next();
    if (step.done) return { file: step.value, steps };
    expect(step.value.rowsTotal).toBe(rows.length);
    steps.push(step.value.rowsDone);
  }
}

describe('readRows', () => {
  it('numbers rows as the spreadsheet does and passes over blank ones', () => {
    const { file } = readAll([['D-01', 'die'], ['', ' '], [], ['D-02', 'spoon'], ['D-03', 'die']]);
    if (file.kind !== 'tools') throw new Error(file.kind);
    expect(file.rows.map(({ row }) => row.rowNo)).toEqual([2, 6]);
    expect(new Set(file.rows.map(({ entryId }) => entryId)).size).toBe(2);
    expect(file.errors.map((error) => error.rowNo)).toEqual([5]);
    expect([file.rowsTotal, file.errorCount]).toEqual([3, 1]);
    expect(file.firstRows.map((row) => row.rowNo)).toEqual([2, 5, 6]);
  });

  it('shows how far it has come', () => {
    const { steps } = readAll(Array.from({ length: 3500 }, (_, at) => [`D-${at}`, 'die']));
    expect(steps).toEqual([1000, 2000, 3000, 3500]);
  });

  it('lists the first errors and counts all', () => {
    const { file } = readAll(Array.from({ length: 500 }, () => ['D-01', 'spoon']));
    expect([file.errors.length, file.errorCount]).toEqual([ERRORS_LISTED, 500]);
    expect(file.errors.at(-1)?.rowNo).toBe(ERRORS_LISTED + 1);
  });

  it('notices a row with more cells than the header', () => {
    const { file } = readAll([
      ['D-01', 'die', 'a', 'b'],
      ['D-02', 'die', 'a', '', ''],
    ]);
    expect(file.errors).toHaveLength(1);
    expect(file.errors[0]).toMatchObject({ rowNo: 2, column: null });
    expect(file.rows).toHaveLength(1);
  });

  it('takes a cell of a million characters with one sentence', () => {
    const { file } = readAll([['D-01', 'die', 'x'.repeat(1_000_000)]]);
    expect(file.errors).toEqual([
      { rowNo: 2, column: 'note', sentence: 'This cell is longer than 300 characters.' },
    ]);
    expect(file.firstRows[0]?.cells[2]).toHaveLength(200);
  });
});

describe('checkTable', () => {
  const said = (header: string[], mapping: (string | null)[], rows: string[][] = []) => {
    const checked = checkTable('tools', { header, rows }, mapping);
    return checked.ok ? 'ok' : checked.refusal.sentence;
  };

  it('names the columns that are missing or read twice', () => {
    expect(said(HEADER, MAPPING as string[])).toBe('ok');
    expect(said(['a', 'b'], [null, null])).toContain('tool_id, kind');
    expect(said(['a', 'b', 'c'], ['tool_id', 'kind', 'kind'])).toContain('read as kind');
  });

  it('refuses too many columns or rows', () => {
    expect(
      said(
        Array.from({ length: 10_000 }, () => 'x'),
        [],
      ),
    ).toContain('10000 columns');
    expect(said(HEADER, MAPPING as string[], new Array(200_001).fill([]))).toContain('200001 rows');
  });
});
