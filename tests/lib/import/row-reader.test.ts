import { describe, expect, it } from 'vitest';
import { readCountCell } from '@/lib/import/cell-value';
import { placesOf, RowReader } from '@/lib/import/row-reader';

const places = placesOf(['ends', null, 'heat'], ['Qty', 'Weather', 'Heat No.']);
const count = (text: string) => readCountCell(text, { min: 1, max: 10 });

describe('RowReader', () => {
  it('reads cells by our column, whatever the file calls it', () => {
    const row = new RowReader(7, ['3', 'rain', " 'H1 "], places);
    expect([row.needed('ends', count), row.text('heat'), row.text('lot')]).toEqual([3, 'H1', '']);
    expect([row.has('ends'), row.has('lot')]).toEqual([true, false]);
    expect(row.errors).toEqual([]);
  });

  it('gathers what is wrong under the file’s own header and goes on', () => {
    const row = new RowReader(7, ['none', '', 'a\u0007'], places);
    expect([row.needed('ends', count), row.text('heat')]).toEqual([null, '']);
    expect(row.errors.map(({ rowNo, column }) => [rowNo, column])).toEqual([
      [7, 'Qty'],
      [7, 'Heat No.'],
    ]);
  });

  it('says once that a cell is needed, and takes a missing cell for an empty one', () => {
    const row = new RowReader(2, [], places);
    expect(row.optional('ends', count)).toBeNull();
    expect(row.errors).toEqual([]);
    row.needed('ends', count);
    expect(row.errors).toEqual([{ rowNo: 2, column: 'Qty', sentence: 'This cell must not be empty.' }]);
  });

  it.each(['a\u202eb', 'a\u2028b', 'a\u200bb', 'a\u00adb', 'a\u061cb'])(
    'refuses what hides or turns text: %j',
    (cell) => {
      const row = new RowReader(2, ['1', '', cell], places);
      expect(row.text('heat')).toBe('');
      expect(row.errors[0]?.sentence).toBe('This cell holds characters that cannot be printed.');
    },
  );

  it('refuses a cell that is too long without repeating it', () => {
    const row = new RowReader(2, ['1', '', 'x'.repeat(1_000_000)], places);
    expect(row.text('heat', 40)).toBe('');
    expect(row.errors[0]?.sentence).toBe('This cell is longer than 40 characters.');
  });
});
