import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkImport, importFile } from '@/db/commands/import-file';
import { reverseEntry } from '@/db/commands/reverse-entry';
import type { Db } from '@/db/open';
import { importText, readText } from '@/tests/support/csv-import';
import { BLADE, DIE, dump, ENV, entered, may, must, receive, testShop } from '@/tests/support/db';

const CUT_HEADER = 'tool_id,cut_on,size,service,material,ends,good_ends,by,edge_ended';

function shopWithTools(): Db {
  const db = testShop();
  for (const id of ['D-01', 'D-02']) receive(db, id, DIE);
  receive(db, 'B-01', BLADE);
  return db;
}

function cuts(...rows: string[]): string {
  return [CUT_HEADER, ...rows].join('\n');
}

function count(db: Db, sql: string): number {
  return db.$client.prepare(`SELECT COUNT(*) FROM ${sql}`).pluck().get() as number;
}

function faults(db: Db, kind: 'tools' | 'cuts' | 'jobs', text: string): [number, string | null][] {
  const check = must(checkImport(db, may('import-file'), readText(kind, text), ENV));
  return check.errors.map(({ rowNo, column }) => [rowNo, column]);
}

describe('a tools file', () => {
  const FILE = [
    'Tool ID;Type;Size;Pressure;Hand;Lot;Used;Opening material;Cal due;Status;Notes',
    "D-56-01;Threading die;9/16;high;LH;L1;34;316;;;'=from the card",
    'B-56-01;blade;9/16 in;;;;new;;;in the crib;',
    'G-56-1;GO gage;0.5625;;LH;;;;2026-09-01;quarantined;dropped',
    'BDY-A;coning body;9/16;;;;;;;;',
    'F-01;oil;;;;;;;;;',
  ].join('\r\n');

  it('is received into the crib with what it had cut before, and is put where the file says', () => {
    const db = testShop();
    const done = must(importText(db, 'tools', FILE));
    expect(done).toMatchObject({ rowsTotal: 5, newRows: 5, alreadyThere: 0, errorCount: 0 });
    const rows = db.$client
      .prepare('SELECT id, part_id, state, state_reason FROM tool ORDER BY id')
      .raw()
      .all();
    expect(rows).toEqual([
      ['B-56-01', 'blade-56', 'in-crib', ''],
      ['BDY-A', 'body', 'in-crib', ''],
      ['D-56-01', 'die-56', 'in-crib', '=from the card'],
      ['F-01', 'oil', 'in-crib', ''],
      ['G-56-1', 'go-56', 'quarantined', 'dropped'],
    ]);
    // source: hand. 34 ends × 10.5 turns = 357 turns (10.5/18 in × 18 TPI).
    const use = db.$client
      .prepare("SELECT ends, exposure_micro FROM edge_use WHERE tool_id = 'D-56-01'")
      .raw()
      .get();
    expect(use).toEqual([34, 357_000_000]);
  });

  it('names each row that cannot come in', () => {
    const header = 'tool_id,kind,part,size,service,hand,calibration_due,state';
    const rows = [
      'D-01,die,,9/16,high,LH,,',
      'D-1O,die,,9/16,high,LH,,',
      'D-10,die,,9/16,high,LH,,',
      'D-03,die,,1,high,LH,,',
      'D-04,die,,9/16,high,RH,,',
      'D-05,die,die-56,,,RH,,',
      'D-06,die,,9/16,high,,,',
      'G-01,GO ring,,9/16,,LH,,',
      'D-07,die,,9/16,high,LH,,issued',
    ];
    const db = shopWithTools();
    const check = must(
      checkImport(db, may('import-file'), readText('tools', [header, ...rows].join('\n')), ENV),
    );
    expect(check.errors.map(({ rowNo, column }) => [rowNo, column])).toEqual([
      [4, 'tool_id'],
      [5, 'kind'],
      [6, 'kind'],
      [7, 'hand'],
      [8, 'hand'],
      [9, 'calibration_due'],
      [10, 'state'],
    ]);
    expect(check.errors[1]?.sentence).toBe(
      'No part for a 1 in high pressure LH threading die. Add the size under Set-up first.',
    );
    expect([check.newRows, check.alreadyThere]).toEqual([1, 1]);
  });

  it('does not change a tool that is in the record, and does not bring one back that was taken back', () => {
    const db = shopWithTools();
    expect(faults(db, 'tools', 'tool_id,kind,part,hand,lot\nD-01,die,die-56,LH,other')).toEqual([[2, 'lot']]);
    expect(faults(db, 'tools', 'tool_id,kind,part,hand\nD-0I,die,die-56,LH')).toEqual([[2, 'tool_id']]);
    const text = 'tool_id,kind,part,hand\nD-09,die,die-56,LH';
    must(importText(db, 'tools', text));
    const targetId = db.$client
      .prepare("SELECT id FROM entry WHERE subject_id = 'D-09'")
      .pluck()
      .get() as string;
    must(reverseEntry(db, may('reverse-entry'), { ...entered({ reason: 'not ours' }), targetId }, ENV));
    const again = must(importText(db, 'tools', text));
    expect([again.newRows, again.alreadyThere, again.remarkCount]).toEqual([0, 1, 1]);
    expect(count(db, "tool WHERE id = 'D-09'")).toBe(0);
  });
});

describe('a cuts file', () => {
  it('is logged by day, by the importer, with the one who cut in the note and noon as the moment', () => {
    const db = shopWithTools();
    must(
      importText(
        db,
        'cuts',
        cuts(
          'D-01,2026-02-11,9/16,high,316,4,4,ash moor,',
          'd 01,2026-02-10,9/16,medium,316,6,5,Someone Else,',
        ),
      ),
    );
    const log = db.$client
      .prepare(
        'SELECT c.ends, c.cut_at_ms, c.person_id, e.reason, c.exposure_micro FROM cut c JOIN entry e ON e.id = c.entry_id ORDER BY c.seq',
      )
      .raw()
      .all();
    // source: hand. 6 ends × 9 turns (12.7 mm × 18 ÷ 25.4) and 4 ends × 10.5 turns, in millionths.
    expect(log).toEqual([
      [6, Date.UTC(2026, 1, 10, 12), 'robin', 'by Someone Else', 54_000_000],
      [4, Date.UTC(2026, 1, 11, 12), 'robin', 'by Ash Moor', 42_000_000],
    ]);
  });

  it('ends edges and renews reground blades', () => {
    const db = shopWithTools();
    const text = cuts(
      'B-01,2026-02-10,9/16,high,316,30,30,,"worn, reground"',
      'B-01,2026-02-11,9/16,high,316,20,20,,reground',
      'B-01,2026-02-12,9/16,high,316,10,10,,chipped early',
      'D-01,2026-02-12,9/16,high,316,10,10,,taken out while still good',
    );
    must(importText(db, 'cuts', text));
    const edges = db.$client
      .prepare(
        'SELECT e.tool_id, e.edge_no, e.end, e.cause, SUM(u.ends) FROM edge e JOIN edge_use u USING (tool_id, edge_no) GROUP BY 1, 2 ORDER BY 1, 2',
      )
      .raw()
      .all();
    expect(edges).toEqual([
      ['B-01', 1, 'worn', 'worn', 30],
      ['B-01', 2, 'removed-working', 'retired-good', 20],
      ['B-01', 3, 'incident', 'chipped-early', 10],
      ['D-01', 1, 'removed-working', 'retired-good', 10],
    ]);
    expect(db.$client.prepare('SELECT id, state FROM tool ORDER BY id').raw().all()).toEqual([
      ['B-01', 'scrapped'],
      ['D-01', 'quarantined'],
      ['D-02', 'in-crib'],
    ]);
    const before = dump(db);
    expect(must(importText(db, 'cuts', text))).toMatchObject({ newRows: 0, alreadyThere: 4 });
    expect(dump(db)).toEqual(before);
  });

  it('adds an ending that was written in later, and not the cut again', () => {
    const db = shopWithTools();
    must(importText(db, 'cuts', cuts('D-01,2026-02-10,9/16,high,316,30,30,,')));
    expect(must(importText(db, 'cuts', cuts('D-01,2026-02-10,9/16,high,316,30,30,,worn'))).newRows).toBe(1);
    expect([count(db, 'cut'), count(db, "edge WHERE end = 'worn'")]).toEqual([1, 1]);
    expect(faults(db, 'cuts', cuts('D-01,2026-02-10,9/16,high,316,30,30,,dropped'))).toEqual([
      [2, 'edge_ended'],
    ]);
  });

  it('names each row that the ledger refuses', () => {
    const db = shopWithTools();
    receive(db, 'B-99', { ...BLADE, id: 'blade-56' });
    const text = cuts(
      'D-01,2026-02-12,9/16,high,316,5,5,,',
      'D-77,2026-02-10,9/16,high,316,5,5,,',
      'D-01,2026-02-10,1/4,medium,316,5,5,,',
      'D-01,2026-02-10,1,high,316,5,5,,',
      'D-01,2026-02-10,9/16,high,inox,5,5,,',
      'D-01,2026-02-11,9/16,high,316,5,5,,worn',
      'D-02,2026-02-11,9/16,high,316,5,5,,reground',
      'D-02,2027-02-11,9/16,high,316,5,5,,',
      'B-99,2026-02-11,9/16,high,316,5,5,,"worn, reground"',
      'B-99,2026-02-12,9/16,high,316,5,5,,"worn, reground"',
      'B-99,2026-02-13,9/16,high,316,5,5,,"worn, reground"',
    );
    expect(faults(db, 'cuts', text)).toEqual([
      [2, 'tool_id'],
      [3, 'tool_id'],
      [4, 'size'],
      [5, 'size'],
      [6, 'material'],
      [8, 'edge_ended'],
      [9, 'cut_on'],
      [12, 'edge_ended'],
    ]);
  });

  it('finds the job line that a job means where only one can be meant', () => {
    const db = shopWithTools();
    must(
      importText(
        db,
        'jobs',
        'job,size,service,material,ends,thread,start_on,due_on\nJ-1,9/16,high,316,8,yes,2026-02-01,2026-02-20\nJ-1,9/16,medium,316,8,yes,2026-02-01,2026-02-20',
      ),
    );
    const header = 'tool_id,cut_on,size,service,material,ends,job';
    const text = [
      header,
      ...['J-1', 'J-1.2', 'J-404'].map((job) => `D-01,2026-02-10,9/16,high,316,5,${job}`),
    ].join('\n');
    must(importText(db, 'cuts', text));
    expect(db.$client.prepare('SELECT job_line_id FROM cut ORDER BY seq').pluck().all()).toEqual([
      'J-1.1',
      'J-1.2',
      'J-404',
    ]);
  });

  it('refuses a row whose own ID stands for something else in the record', () => {
    const db = shopWithTools();
    const header = 'entry_id,tool_id,cut_on,size,service,material,ends';
    const row = 'old-log-0001,D-01,2026-02-10,9/16,high,316,5';
    must(importText(db, 'cuts', `${header}\n${row}`));
    expect(must(importText(db, 'cuts', `${header}\n${row}`))).toMatchObject({ newRows: 0, alreadyThere: 1 });
    expect(faults(db, 'cuts', `${header}\n${row.replace(/5$/, '6')}`)).toEqual([[2, 'entry_id']]);
    expect(faults(db, 'cuts', `${header}\n${row.replace('D-01', 'D-02')}`)).toEqual([[2, 'entry_id']]);
  });

  it('leaves a row out that was taken back, in the file or in the record', () => {
    const db = shopWithTools();
    const text = cuts('D-01,2026-02-10,9/16,high,316,40,40,,');
    must(importText(db, 'cuts', text));
    const targetId = db.$client.prepare('SELECT entry_id FROM cut').pluck().get() as string;
    must(reverseEntry(db, may('reverse-entry'), { ...entered({ reason: 'wrong die' }), targetId }, ENV));
    const before = dump(db);
    expect(must(importText(db, 'cuts', text))).toMatchObject({ newRows: 0, alreadyThere: 1 });
    const marked = 'tool_id,cut_on,size,service,material,ends,reversed\nD-01,2026-02-11,9/16,high,316,40,yes';
    expect(must(importText(db, 'cuts', marked))).toMatchObject({ newRows: 0, leftOut: 1 });
    expect(dump(db)).toEqual(before);
  });
});

describe('a jobs file', () => {
  const HEADER = 'job,title,line,size,service,material,ends,cone,thread,start_on,due_on,status';
  const A1 = 'J-1,Bench,1,9/16,high,316,24,yes,yes,2026-04-06,2026-04-17,';
  const A2 = 'J-1,,2,1,high,Ti-2,6,yes,yes,2026-04-06,2026-04-17,';
  const B1 = 'J-2,Old,1,9/16,medium,316,4,yes,no,2026-01-06,2026-01-17,done';
  const jobs = (...rows: string[]) => [HEADER, ...rows].join('\n');

  it('enters each job as one, keeps sizes the shop cannot make, and says so', () => {
    const db = testShop();
    const done = must(importText(db, 'jobs', jobs(A1, B1, A2)));
    expect(done).toMatchObject({ newRows: 3, errorCount: 0, remarkCount: 2 });
    expect(done.remarks.map((remark) => remark.rowNo)).toEqual([4, 4]);
    expect(db.$client.prepare('SELECT id, status FROM job ORDER BY id').raw().all()).toEqual([
      ['J-1', 'open'],
      ['J-2', 'done'],
    ]);
    expect(db.$client.prepare('SELECT id, connection_id FROM job_line ORDER BY id').raw().all()).toEqual([
      ['J-1.1', '9-16-high'],
      ['J-1.2', '1-high'],
      ['J-2.1', '9-16-medium'],
    ]);
    expect(count(db, "entry WHERE kind = 'job-set'")).toBe(2);
  });

  it('counts unchanged lines as there, drops lines with a remark, and can go back to an earlier plan', () => {
    const db = testShop();
    must(importText(db, 'jobs', jobs(A1)));
    expect(must(importText(db, 'jobs', jobs(A1, A2)))).toMatchObject({ newRows: 1, alreadyThere: 1 });
    const back = must(importText(db, 'jobs', jobs(A1)));
    expect(back.remarks[0]?.sentence).toContain('line 2 in the record and not in this file');
    expect(count(db, 'job_line')).toBe(1);
    must(importText(db, 'jobs', jobs(A1, A2)));
    expect(count(db, 'job_line')).toBe(2);
  });

  it('does not open a closed job again with the same lines', () => {
    const db = testShop();
    must(importText(db, 'jobs', jobs(B1)));
    expect(must(importText(db, 'jobs', jobs(B1.replace('done', 'open'))))).toMatchObject({
      newRows: 0,
      alreadyThere: 1,
    });
    expect(count(db, "job WHERE status = 'done'")).toBe(1);
    expect(must(importText(db, 'jobs', jobs(B1.replace(',4,', ',5,')))).remarks[0]?.sentence).toContain(
      'opens it again',
    );
  });
});

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
});
