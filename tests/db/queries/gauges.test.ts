import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { listEvidence, listGauges, listGaugesDueByEnds } from '@/db/queries/gauges';
import { DIE, must, RING, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'G-56-GO-2', RING);
  receive(db, 'D-56-01', DIE);
});

it('the register holds the gauges, lost ones too, scrapped ones not', () => {
  receive(db, 'G-56-GO-3', RING);
  must(send.move('G-56-GO-2', 'lost'));
  must(send.move('G-56-GO-3', 'scrapped'));
  expect(listGauges(db).map(({ id, state }) => [id, state])).toEqual([
    ['G-56-GO-1', 'in-crib'],
    ['G-56-GO-2', 'lost'],
  ]);
});

it('shows the latest certificate by its day, whenever it was entered', () => {
  must(send.calibrate('G-56-GO-1', { onDay: '2026-03-01', laboratory: 'Plumbgate' }));
  must(
    send.calibrate('G-56-GO-1', { onDay: '2025-03-01', dueOnDay: '2026-12-31', laboratory: 'an older one' }),
  );
  expect(listGauges(db)[0]).toMatchObject({ calibratedOnDay: '2026-03-01', laboratory: 'Plumbgate' });
  expect(listEvidence(db, 'G-56-GO-1').map(({ onDay }) => onDay)).toEqual(['2025-03-01', '2026-03-01']);
});

it('a certificate taken back is gone from the register', () => {
  const { id } = must(send.calibrate('G-56-GO-1'));
  must(send.reverse(id));
  expect(listGauges(db)[0]).toMatchObject({ calibratedOnDay: null, dueOnDay: '2026-12-31' });
  expect(listGaugesDueByEnds(db)).toEqual([]);
});
