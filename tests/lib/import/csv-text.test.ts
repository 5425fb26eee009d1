import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '@/app/_import/read-csv';
import { plainCell } from '@/lib/import/cell-text';
import { csvLine, csvText } from '@/lib/import/csv-text';

describe('csvText', () => {
  // source: published. RFC 4180 section 2: CRLF after every record, quotes around a cell with a comma, a line break or
  // a quote, and quotes inside doubled; its example "aaa","b""bb","ccc" without the quotes that are not needed.
  it('follows RFC 4180', () => {
    expect(
      csvText(
        ['aaa', 'b'],
        [
          ['b"bb', 'c,c'],
          ['x\r\ny', ''],
        ],
      ),
    ).toBe('\uFEFFaaa,b\r\n"b""bb","c,c"\r\n"x\r\ny",\r\n');
  });

  it('guards what a spreadsheet would take for a formula, and quotes what it might split', () => {
    expect(csvLine(['=HYPERLINK("x")', 'a;=1'])).toBe('"\'=HYPERLINK(""x"")","a;=1"\r\n');
  });

  it('is read back cell by cell by an independent reader', () => {
    const cell = fc
      .string({ unit: 'grapheme', maxLength: 12 })
      .map((text) => text.replace(/\p{Cc}/gu, '').trim());
    const grid = fc.array(fc.tuple(cell, cell, fc.constantFrom('=1', '"', ',', ';x', "'", '9/16 in')), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(grid, (rows) => {
        const table = readCsv(new TextEncoder().encode(csvText(['a', 'b', 'c'], rows)));
        expect(table.ok && table.value.rows.map((row) => row.map(plainCell))).toEqual(rows);
      }),
    );
  });
});
