import { describe, expect, it } from 'vitest';
import { count, importText } from '@/tests/support/csv-import';
import { must, testShop } from '@/tests/support/db';

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
