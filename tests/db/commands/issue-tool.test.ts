import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { DIE, dump, must, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
});

it('a tool goes out to a person, and comes back', () => {
  must(send.issue('d-56-o1', { bench: '4', jobLineId: 'J-86.2' }));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({
    ...{ state: 'issued', holder_id: 'ash', bench: '4', job_line_id: 'J-86.2' },
  });
  must(send.giveBack('D-56-01'));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({
    ...{ state: 'in-crib', holder_id: null, bench: '', job_line_id: null },
  });
});

it.each([
  ['ok', 'in-crib'],
  ['dull', 'quarantined'],
  ['damaged', 'quarantined'],
  ['unsure', 'quarantined'],
])('coming back %s, it is %s', (condition, state) => {
  must(send.issue('D-56-01'));
  must(send.giveBack('D-56-01', { condition }));
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state });
});

it('says who has it', () => {
  must(send.issue('D-56-01', { bench: '4', jobLineId: 'J-86.2' }));
  expect(sentence(send.issue('D-56-01', { toPersonId: 'robin' }))).toBe(
    'D-56-01 is with Ash Moor at bench 4, for J-86.2; it must come back before it can be issued again.',
  );
  must(send.giveBack('D-56-01'));
  must(send.issue('D-56-01', { toPersonId: 'robin' }));
  expect(sentence(send.issue('D-56-01'))).toBe(
    'D-56-01 is with Robin Vale; it must come back before it can be issued again.',
  );
});

it('an issue sent again after the tool came back is still known', () => {
  must(send.issue('D-56-01', { entryId: 'issue-once' }));
  must(send.giveBack('D-56-01'));
  const before = dump(db);
  expect(must(send.issue('D-56-01', { entryId: 'issue-once' })).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'D-56-02', DIE);
  must(send.move('D-56-02', 'lost'));
  receive(db, 'D-56-03', DIE);
  must(send.end('D-56-03', 'dropped', 'quarantined'));
  const before = dump(db);
  expect([
    sentence(send.issue('D-99-01')),
    sentence(send.issue('D-56-01', { toPersonId: 'nobody' })),
    sentence(send.issue('D-56-02')),
    sentence(send.issue('D-56-03')),
    sentence(send.giveBack('D-56-01')),
  ]).toEqual([
    'No tool D-99-01 is in the record. Check the mark, or receive it first.',
    'Choose who it goes to.',
    'D-56-02 is lost; only a tool in the crib can be issued.',
    'D-56-03 is quarantined; only a tool in the crib can be issued.',
    'D-56-01 is in the crib; only an issued tool can come back.',
  ]);
  expect(dump(db)).toEqual(before);
});
