import { parse } from 'csv-parse/sync';
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
    expect(csvLine(['=HYPERLINK("x")', 'a;=1'])).toBe('"\'=HYPERLINK(""x"")","a;\'=1"\r\n');
  });

  // source: published. OWASP, CSV injection. Parted at the commas it was written with, or at semicolons or tabs as programs in
  // other countries do, no cell of a file begins with a sign that makes a formula.
  it('holds no formula, at whatever sign a program parts its cells', () => {
    const piece = fc.constantFrom(
      '=',
      '+',
      '-',
      '@',
      '＝',
      '"',
      "'",
      ';',
      ',',
      '\t',
      '\n',
      '\r',
      ' ',
      'a',
      '1',
    );
    const cell = fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 4 }), (cells) => {
        const [header, ...rows] = csvText(['a'], [cells]).split('\r\n');
        expect(header).toBe('\uFEFFa');
        const line = rows.join('\r\n');
        const asWritten: string[][] = parse(line, { delimiter: ',' });
        const asOthersRead = line.split(/[;\t\r\n]/).map((text) => text.replace(/^\s*"|"\s*$/g, ''));
        for (const text of [...asWritten.flat(), ...asOthersRead]) expect(text).not.toMatch(/^\s?[=+@＝-]/);
      }),
      { numRuns: 2000 },
    );
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
