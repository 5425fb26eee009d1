import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { DIE, dump, FLUID, must, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'F-L01', FLUID, { levelMl: 500 });
});

it('a bottle is opened once, and its level is read', () => {
  must(send.open('F-L01', '2026-03-02'));
  must(send.level('F-L01', 320.5));
  expect(row(db, 'tool', 'id', 'F-L01')).toMatchObject({ opened_on_day: '2026-03-02', level_ml: 320.5 });
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'D-56-01', DIE);
  receive(db, 'F-L02', FLUID);
  must(send.move('F-L02', 'scrapped'));
  must(send.open('F-L01', '2026-03-02'));
  const before = dump(db);
  expect([
    sentence(send.open('F-L01', '2026-03-03')),
    sentence(send.open('D-56-01', '2026-03-02')),
    sentence(send.level('D-56-01', 10)),
    sentence(send.level('F-L02', 10)),
  ]).toEqual([
    'F-L01 was already opened on 2 Mar 2026.',
    'D-56-01 is not a fluid.',
    'D-56-01 is not a fluid.',
    'F-L02 is scrapped; nothing can be read or opened.',
  ]);
  expect(dump(db)).toEqual(before);
});
