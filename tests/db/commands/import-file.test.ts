import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkImport, importFile } from '@/db/commands/import-file';
import { IMPORT_KINDS } from '@/lib/import/column';
import { COLUMNS } from '@/lib/import/columns';
import {
  CUT_HEADER,
  count,
  cuts,
  importText,
  readTable,
  readText,
  shopWithTools,
} from '@/tests/support/csv-import';
import { dump, ENV, may, must } from '@/tests/support/db';

const GOOD = ['D-01', 'D-02', 'B-01'].flatMap((tool) =>
  ['2026-02-10', '2026-02-11', '2026-02-12'].map(
    (day, at) => `${tool},${day},9/16,${at === 1 ? 'high' : 'medium'},316,${at + 3},${at + 2},,`,
  ),
);
const BROKEN = [
  'D-01,2026-02-10,9/16,high,316,0,0,,',
  'D-01,03/04/2026,9/16,high,316,1,1,,',
  'D-77,2026-02-10,9/16,high,316,1,1,,',
  'D-01,2026-02-10,1,high,316,1,1,,',
  'D-02,2026-02-10,9/16,high,316,1,1,,reground',
  'D-02,2030-01-01,9/16,high,316,1,1,,',
];

describe('whatever the file', () => {
  it('nothing changes in the database when any row is broken, nor by looking', () => {
    const db = shopWithTools();
    const before = dump(db);
    const some = fc.tuple(
      fc.subarray(GOOD),
      fc.subarray(BROKEN, { minLength: 1 }),
      fc.integer({ min: 0, max: 20 }),
    );
    fc.assert(
      fc.property(some, ([good, broken, turn]) => {
        const rows = [...good, ...broken];
        const by = turn % rows.length;
        const file = readText('cuts', cuts(...rows.slice(by), ...rows.slice(0, by)));
        const check = must(checkImport(db, may('import-file'), file, ENV));
        expect([check.errorCount, check.newRows]).toEqual([broken.length, good.length]);
        const done = importFile(db, may('import-file'), file, { ...ENV, batchId: 'batch-x' });
        expect(!done.ok && done.refusal.check).toEqual(check);
        expect(dump(db)).toEqual(before);
      }),
      { numRuns: 40 },
    );
    const clean = readText('cuts', cuts(...GOOD));
    expect(must(checkImport(db, may('import-file'), clean, ENV)).newRows).toBe(GOOD.length);
    expect(dump(db)).toEqual(before);
  });

  it('the same file again, with its columns in any order, adds nothing; a grown one only its new rows', () => {
    const columns = CUT_HEADER.split(',').map((_name, at) => at);
    const picks = fc.tuple(
      fc.array(fc.constantFrom(...GOOD), { minLength: 1, maxLength: 12 }),
      fc.array(fc.constantFrom(...GOOD), { maxLength: 6 }),
      fc.shuffledSubarray(columns, { minLength: columns.length }),
    );
    const inOrder = (text: string, order: number[]) =>
      text
        .split('\n')
        .map((line) => order.map((at) => line.split(',')[at]).join(','))
        .join('\n');
    fc.assert(
      fc.property(picks, ([rows, added, order]) => {
        const db = shopWithTools();
        const text = cuts(...rows);
        expect(must(importText(db, 'cuts', text)).newRows).toBe(rows.length);
        const before = dump(db);
        expect(must(importText(db, 'cuts', inOrder(text, order)))).toMatchObject({
          newRows: 0,
          alreadyThere: rows.length,
        });
        expect(dump(db)).toEqual(before);
        const grown = must(importText(db, 'cuts', cuts(...added, ...rows)));
        expect(grown).toMatchObject({ newRows: added.length, alreadyThere: rows.length });
        expect(count(db, 'cut')).toBe(rows.length + added.length);
        db.$client.close();
      }),
      { numRuns: 25 },
    );
  });

  it('a preview counts as the import then does, and marks its entries as one batch', () => {
    const db = shopWithTools();
    const file = readText('cuts', cuts(...GOOD));
    const check = must(checkImport(db, may('import-file'), file, ENV));
    expect(check.firstRows[0]).toMatchObject({ rowNo: 2, standing: 'new' });
    expect(check.firstRows[0]?.cells[0]).toBe('D-01');
    expect(must(importFile(db, may('import-file'), file, { ...ENV, batchId: 'batch-77' }))).toEqual(check);
    expect(count(db, "entry WHERE batch_id = 'batch-77'")).toBe(GOOD.length);
  });

  it('errors are all counted and the first of them listed, in row order', () => {
    const db = shopWithTools();
    const rows = Array.from({ length: 600 }, (_, at) => (at % 2 === 0 ? BROKEN[0] : BROKEN[2]) ?? '');
    const check = must(checkImport(db, may('import-file'), readText('cuts', cuts(...rows)), ENV));
    expect([check.errorCount, check.errors.length]).toEqual([600, 200]);
    expect(check.errors.map((error) => error.rowNo)).toEqual(Array.from({ length: 200 }, (_, at) => at + 2));
  });

  it('hostile cells end in errors, never in an exception or a change', () => {
    const db = shopWithTools();
    const before = dump(db);
    const nasty = fc.constantFrom(
      ...[
        '',
        '=cmd|x',
        '__proto__',
        'constructor',
        '\u0000',
        '\u0007',
        '9/16',
        'D-01',
        '1e999',
        'NaN',
        '-1',
        "';--",
        '\ud800',
      ],
      'x'.repeat(5000),
    );
    const kinds = fc.constantFrom(...IMPORT_KINDS);
    fc.assert(
      fc.property(
        kinds,
        fc.array(fc.array(nasty, { minLength: 18, maxLength: 18 }), { minLength: 1, maxLength: 5 }),
        (kind, rows) => {
          const header = [...COLUMNS[kind].map((column) => column.key), '__proto__', 'constructor'].slice(
            0,
            18,
          );
          const file = readTable(kind, { header, rows });
          const check = must(checkImport(db, may('import-file'), file, ENV));
          const settled = check.newRows + check.alreadyThere + check.leftOut;
          expect(settled <= check.rowsTotal && (settled === check.rowsTotal || check.errorCount > 0)).toBe(
            true,
          );
          expect(dump(db)).toEqual(before);
        },
      ),
      { numRuns: 60 },
    );
  });
});
