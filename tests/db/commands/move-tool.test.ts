import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { BLADE, DIE, dump, must, RING, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
});

it('a blade goes out for regrind with the day it is expected back, and that day can move', () => {
  must(send.move('B-56-01', 'regrind', { backOnDay: '2026-03-20', reason: '' }));
  expect(row(db, 'tool', 'id', 'B-56-01')).toMatchObject({ state: 'regrind', back_on_day: '2026-03-20' });
  must(send.move('B-56-01', 'regrind', { backOnDay: '2026-04-02' }));
  expect(row(db, 'tool', 'id', 'B-56-01')).toMatchObject({ state: 'regrind', back_on_day: '2026-04-02' });
});

it('what was lost can be found', () => {
  must(send.move('D-56-01', 'lost', { reason: 'not in the drawer' }));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({
    state: 'lost',
    state_reason: 'not in the drawer',
  });
  must(send.move('D-56-01', 'in-crib'));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'in-crib' });
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'D-56-02', DIE);
  must(send.move('D-56-02', 'scrapped'));
  receive(db, 'D-56-03', DIE);
  must(send.end('D-56-03', 'worn', 'quarantined'));
  receive(db, 'D-56-04', DIE);
  must(send.issue('D-56-04'));
  const before = dump(db);
  expect([
    sentence(send.move('D-56-01', 'lost', { reason: '' })),
    sentence(send.move('D-56-01', 'issued')),
    sentence(send.move('D-56-01', 'in-crib')),
    sentence(send.move('D-56-01', 'regrind')),
    sentence(send.move('D-56-01', 'calibration')),
    sentence(send.move('D-56-01', 'lost', { backOnDay: '2026-03-20' })),
    sentence(send.move('D-56-02', 'in-crib')),
    sentence(send.move('D-56-03', 'in-crib')),
    sentence(send.move('D-56-04', 'in-crib')),
  ]).toEqual([
    'Say why, in a few words.',
    'A tool goes out by issuing it to a person.',
    'D-56-01 is already in the crib.',
    'Only blades are reground.',
    'D-56-01 is not kept under calibration.',
    'Only a tool that is away can have a day it is expected back.',
    'D-56-02 is scrapped; reverse that entry if it was a mistake.',
    'D-56-03 has no edge left in service; it cannot go back to the crib.',
    'D-56-04 is issued; return it instead.',
  ]);
  expect(dump(db)).toEqual(before);
});

it('a gauge goes out for calibration', () => {
  receive(db, 'G-56-GO-1', RING);
  must(send.move('G-56-GO-1', 'calibration', { backOnDay: '2026-03-20' }));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'calibration' });
});
