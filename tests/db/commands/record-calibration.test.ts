import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { DIE, dump, must, RING, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'G-56-GO-1', RING);
});

it('passed and back from calibration, it is in the crib until its next due day', () => {
  must(send.move('G-56-GO-1', 'calibration'));
  must(send.calibrate('G-56-GO-1'));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'in-crib', due_on_day: '2027-03-01' });
});

it('passed where it stands, it stays there', () => {
  must(send.issue('G-56-GO-1'));
  must(send.calibrate('G-56-GO-1'));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'issued', holder_id: 'ash' });
});

it('failed, it is quarantined and has no due day', () => {
  must(send.issue('G-56-GO-1'));
  must(send.calibrate('G-56-GO-1', { result: 'fail', dueOnDay: null }));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({
    ...{ state: 'quarantined', due_on_day: null, holder_id: null },
  });
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-2', RING);
  must(send.move('G-56-GO-2', 'lost'));
  const before = dump(db);
  expect([
    sentence(send.calibrate('D-56-01')),
    sentence(send.calibrate('G-56-GO-1', { dueOnDay: null })),
    sentence(send.calibrate('G-56-GO-1', { dueOnDay: '2026-03-02' })),
    sentence(send.calibrate('G-56-GO-2')),
  ]).toEqual([
    'D-56-01 is not kept under calibration.',
    'A gauge that passed needs its next due day.',
    'The next due day must lie after the day of calibration.',
    'G-56-GO-2 is lost; it cannot have been calibrated.',
  ]);
  expect(dump(db)).toEqual(before);
});
