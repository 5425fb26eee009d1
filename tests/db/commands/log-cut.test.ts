import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import {
  BLADE,
  BODY,
  DIE,
  dump,
  HIGH,
  MEDIUM,
  must,
  NOW_MS,
  QUARTER,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { row, sender } from '../../support/send';

const HOUR_MS = 3_600_000;
let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
});

// source: hand. 10.5 turns an end (TRADE figures of the 9/16 example): 4 ends = 42 turns; 12 mm at 18 TPI = 216 ÷ 25.4.
it('a row costs the edge its turns, from the connection or from the length typed', () => {
  const own = must(send.cut('D-56-01', 4));
  const typed = must(send.cut('D-56-01', 1, { threadLength: { typed: '12 mm', unit: 'mm' } }));
  expect(row(db, 'cut', 'entry_id', own.id)).toMatchObject({
    exposure_micro: 42_000_000,
    thread_length_mm: null,
  });
  expect(row(db, 'cut', 'entry_id', typed.id)).toMatchObject({
    exposure_micro: 8_503_937,
    thread_length_mm: 12,
  });
  const { payload } = row(db, 'entry', 'id', typed.id) as { payload: string };
  expect(JSON.parse(payload).threadLengthTyped).toBe('12 mm');
});

it('order follows the server, whatever the device’s clock says; the device’s time is kept', () => {
  const early = must(send.cut('D-56-01', 1, { deviceAtMs: NOW_MS + 24 * HOUR_MS }));
  const late = must(send.cut('D-56-01', 2, { deviceAtMs: NOW_MS - 24 * HOUR_MS }, { nowMs: NOW_MS + 1000 }));
  expect(late.seq).toBeGreaterThan(early.seq);
  const kept = db.$client.prepare(
    `SELECT id, device_at_ms, server_at_ms FROM entry WHERE kind = 'cut-logged' ORDER BY seq`,
  );
  expect(kept.all()).toEqual([
    { id: early.id, device_at_ms: NOW_MS + 24 * HOUR_MS, server_at_ms: NOW_MS },
    { id: late.id, device_at_ms: NOW_MS - 24 * HOUR_MS, server_at_ms: NOW_MS + 1000 },
  ]);
  expect(row(db, 'cut', 'entry_id', early.id)).toMatchObject({ cut_at_ms: NOW_MS });
});

it('a device whose clock runs ahead can send its row again, later', () => {
  const ahead = { entryId: 'row-ahead', deviceAtMs: NOW_MS + 24 * HOUR_MS };
  must(send.cut('D-56-01', 1, ahead));
  const before = dump(db);
  expect(must(send.cut('D-56-01', 1, ahead, { nowMs: NOW_MS + HOUR_MS })).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
});

it.each([
  ['ends', { ends: 2, goodEnds: 2 }],
  ['material', { materialId: '2507' }],
  ['length', { threadLength: { typed: '12', unit: 'mm' } }],
  ['note', { reason: 'another note' }],
  ['tool', { toolId: 'D-56-02' }],
])('the same entry ID with another %s is refused', (_what, over) => {
  must(send.cut('D-56-01', 1, { entryId: 'row-once-1' }));
  const before = dump(db);
  expect(sentence(send.cut('D-56-01', 1, { entryId: 'row-once-1', ...over }))).toBe(
    'This entry ID was already used for something else.',
  );
  expect(dump(db)).toEqual(before);
});

it('a row sent again after the tool is gone is still known', () => {
  must(send.cut('D-56-01', 1, { entryId: 'row-once-1' }));
  must(send.end('D-56-01', 'worn', 'scrapped'));
  expect(must(send.cut('D-56-01', 1, { entryId: 'row-once-1' })).alreadyRecorded).toBe(true);
});

it('a row written up late goes on a tool that has come back dull meanwhile', () => {
  must(send.move('D-56-01', 'quarantined'));
  must(send.cut('D-56-01', 3));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'quarantined' });
  expect(row(db, 'edge_use', 'tool_id', 'D-56-01')).toMatchObject({ ends: 3 });
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'BDY-A', BODY);
  receive(db, 'D-56-02', DIE);
  must(send.move('D-56-02', 'lost'));
  receive(db, 'D-56-03', DIE);
  must(send.end('D-56-03', 'worn', 'scrapped'));
  const before = dump(db);
  expect([
    sentence(send.cut('D-99-01', 1)),
    sentence(send.cut('BDY-A', 1)),
    sentence(send.cut('D-56-01', 1, { connectionId: '1-high' })),
    sentence(send.cut('D-56-01', 1, { connectionId: QUARTER.id })),
    sentence(send.cut('D-56-01', 1, { materialId: 'tin' })),
    sentence(send.cut('D-56-01', 1, { threadLength: { typed: '12', unit: 'in' } })),
    sentence(send.cut('D-56-01', 5, { goodEnds: 6 })),
    sentence(send.cut('D-56-01', 5, { goodEnds: 4, rejects: [{ cause: 'go-tight', count: 2 }] })),
    sentence(send.cut('D-56-01', 1, { cutAtMs: NOW_MS + 27 * HOUR_MS })),
    sentence(send.cut('D-56-02', 1)),
    sentence(send.cut('D-56-03', 1)),
  ]).toEqual([
    'No tool D-99-01 is in the record. Check the mark, or receive it first.',
    'BDY-A is not a blade or a die; cones and threads are logged on those.',
    'The shop has no table row for this size and service. Add it from the fitting maker’s manual first.',
    'D-56-01 does not serve 1⁄4 medium pressure.',
    'The shop does not know this material. Add it first.',
    '12 in is 305 mm: did you mean 12 mm?',
    'More good ends than ends cut.',
    'The rejects by cause add up to more than the ends that were not good.',
    'The day it was cut lies in the future. Check the date, or the clock of this device.',
    'D-56-02 is lost; take that entry back first if it was a mistake.',
    'D-56-03 has no edge left in service; nothing more can be cut with it.',
  ]);
  expect(dump(db)).toEqual(before);
});

it('blades cone and dies thread, each in its own measure', () => {
  const cone = must(
    send.cut('B-56-01', 2, { connectionId: MEDIUM.id, threadLength: { typed: '9', unit: 'mm' } }),
  );
  expect(row(db, 'cut', 'entry_id', cone.id)).toMatchObject({ operation: 'cone', thread_length_mm: null });
  const thread = must(send.cut('D-56-01', 2, { connectionId: HIGH.id }));
  expect(row(db, 'cut', 'entry_id', thread.id)).toMatchObject({ operation: 'thread' });
});
