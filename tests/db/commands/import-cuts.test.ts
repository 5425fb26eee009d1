import { describe, expect, it } from 'vitest';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { count, cuts, faults, importText, shopWithTools } from '@/tests/support/csv-import';
import { BLADE, dump, ENV, entered, may, must, receive } from '@/tests/support/db';

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
