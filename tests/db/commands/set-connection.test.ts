import { beforeEach, describe, expect, it } from 'vitest';
import { setConnection } from '@/db/commands/set-connection';
import type { Db } from '@/db/open';
import { findConnection, listConnections, listParts } from '@/db/queries/tables';
import { listEdges } from '@/db/queries/tools';
import { ConnectionInput } from '@/lib/shop/connection-input';
import {
  DIE,
  dump,
  ENV,
  entered,
  HIGH,
  may,
  must,
  receive,
  sentence,
  testDb,
  testShop,
} from '../../support/db';
import { sender } from '../../support/send';

/** 1 in high pressure as somebody might read it in a manual; the figures are invented for the test. */
const typed = {
  size: '1',
  service: 'high',
  tpi: 14,
  hand: 'LH',
  threadClass: '2A',
  threadLength: '1.5',
  nose: '0.5',
  unit: 'in',
  coneAngleDeg: 59,
  notGoTurnsMax: null,
  confirmed: true,
  inUse: true,
};
/** The 9/16 high row of the test shop, its thread typed longer: 12 turns are 2/3 in. */
const change = { ...typed, size: '9/16', tpi: 18, threadLength: '16.9333', nose: '7.1', unit: 'mm' };

let db: Db;
beforeEach(() => {
  db = testShop();
});

function set(fields: object, { isNew = false, ...over }: { isNew?: boolean; entryId?: string } = {}) {
  const input = ConnectionInput.parse({ ...entered(), ...fields, ...over });
  return setConnection(db, may('set-up-shop'), { ...input, isNew }, ENV);
}

// source: hand. 1.5 in are 38.1 mm, 0.5 in 12.7 mm.
describe('a new row', () => {
  it('is kept as typed, in mm, and brings the parts of its complete set', () => {
    expect(must(set(typed, { isNew: true })).connectionId).toBe('1-high');
    const row = findConnection(db, '1-high');
    expect(row).toMatchObject({ odNum: 1, odDen: 1, service: 'high', tpi: 14, confirmed: true });
    expect(row?.threadLengthMm).toBeCloseTo(38.1, 9);
    expect(row?.noseMm).toBeCloseTo(12.7, 9);
    const fitting = listParts(db).filter(({ fitsConnectionIds }) => fitsConnectionIds.includes('1-high'));
    for (const role of ['die', 'blade', 'go-ring', 'not-go-ring', 'coning-body', 'threading-guide'])
      expect(
        fitting.map((part) => part.role),
        role,
      ).toContain(role);
  });

  it('in a shop without materials brings those too, sent twice counts once', () => {
    db = testDb();
    must(set(typed, { isNew: true, entryId: 'row-once' }));
    const before = dump(db);
    expect(must(set(typed, { isNew: true, entryId: 'row-once' })).connectionId).toBe('1-high');
    expect(dump(db)).toEqual(before);
  });
});

describe('a row that is there', () => {
  // source: hand. 16.9333 mm at 18 threads an inch: 12.0 turns; what was cut before stays at 10.5 turns an end.
  it('is replaced; what was cut before keeps the exposure that it was logged with', () => {
    receive(db, 'D-56-01', DIE);
    must(sender(db).cut('D-56-01', 10));
    const parts = listParts(db);
    must(set(change));
    expect(findConnection(db, HIGH.id)).toMatchObject({
      threadLengthMm: 16.9333,
      noseMm: 7.1,
      confirmed: true,
    });
    expect([listConnections(db).length, listParts(db)]).toEqual([3, parts]);
    expect(listEdges(db, 'D-56-01')).toMatchObject([{ use: [{ exposureMicro: 105_000_000 }] }]);
    must(sender(db).cut('D-56-01', 10));
    const turns = (listEdges(db, 'D-56-01')[0]?.use[0]?.exposureMicro ?? 0) / 1e6;
    expect(turns).toBeCloseTo(105 + 120, 2);
  });

  it('sent twice counts once, and other figures under the same ID are refused', () => {
    must(set(change, { entryId: 'row-once' }));
    const before = dump(db);
    must(set(change, { entryId: 'row-once' }));
    expect(sentence(set({ ...change, tpi: 20 }, { entryId: 'row-once' }))).toBe(
      'This entry ID was already used for something else.',
    );
    expect(sentence(set(typed, { entryId: 'row-once', isNew: true }))).toBe(
      'This entry ID was already used for something else.',
    );
    expect(dump(db)).toEqual(before);
  });
});

it('refuses in a sentence, and changes nothing', () => {
  const before = dump(db);
  expect([
    sentence(set(change, { isNew: true })),
    sentence(set({ ...typed, nose: '1.2' })),
    sentence(set({ ...typed, threadLength: 'long' })),
    sentence(set({ ...typed, tpi: 2 })),
  ]).toEqual([
    'The size table has this size and service already. Change its row instead.',
    'The cone’s small end must be smaller than the tube outside diameter.',
    expect.stringMatching(/\S/),
    'Threads per inch must be at least 4.',
  ]);
  expect(dump(db)).toEqual(before);
});
