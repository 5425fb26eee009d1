import { describe, expect, it } from 'vitest';
import { checkImport } from '@/db/commands/import-file';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { count, faults, importText, readText, shopWithTools } from '@/tests/support/csv-import';
import { ENV, entered, may, must, testShop } from '@/tests/support/db';

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
      [6, 'hand'],
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
    const again = must(importText(db, 'tools', text, ENV.nowMs + 7 * 86_400_000));
    expect([again.newRows, again.alreadyThere, again.remarkCount]).toEqual([0, 1, 1]);
    expect(count(db, "tool WHERE id = 'D-09'")).toBe(0);
  });
});
