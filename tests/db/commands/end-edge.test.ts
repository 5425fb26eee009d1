import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { BLADE, BODY, DIE, dump, must, NOW_MS, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;
const edges = (toolId: string) =>
  db.$client.prepare('SELECT edge_no, end, cause FROM edge WHERE tool_id = ? ORDER BY edge_no').all(toolId);

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
});

// source: hand. The list of causes says what each is evidence of; only wear is evidence of wear.
it.each([
  ['worn', 'worn'],
  ['teeth-broken-worn', 'worn'],
  ['dropped', 'incident'],
  ['chipped-early', 'incident'],
  ['cross-threaded', 'incident'],
  ['galled', 'incident'],
  ['bad-lot', 'incident'],
  ['retired-good', 'removed-working'],
])('an edge ended as %s is evidence of kind %s', (cause, end) => {
  must(send.end('D-56-01', cause, 'scrapped'));
  expect(row(db, 'edge', 'tool_id', 'D-56-01')).toMatchObject({ end, cause, ended_at_ms: NOW_MS });
  expect(row(db, 'tool', 'id', 'D-56-01')).toMatchObject({ state: 'scrapped' });
});

it('a reground blade has a new edge from zero and keeps the old one', () => {
  must(send.cut('B-56-01', 5));
  must(send.end('B-56-01', 'worn', 'regrind'));
  must(send.renew('B-56-01'));
  must(send.cut('B-56-01', 2));
  expect(edges('B-56-01')).toEqual([
    { edge_no: 1, end: 'worn', cause: 'worn' },
    { edge_no: 2, end: null, cause: null },
  ]);
  const ends = db.$client.prepare('SELECT edge_no, ends FROM edge_use ORDER BY edge_no').all();
  expect(ends).toEqual([
    { edge_no: 1, ends: 5 },
    { edge_no: 2, ends: 2 },
  ]);
});

it('an edge sent out while good ends as taken out good', () => {
  must(send.move('B-56-01', 'regrind'));
  must(send.renew('B-56-01'));
  expect(edges('B-56-01')[0]).toEqual({ edge_no: 1, end: 'removed-working', cause: 'retired-good' });
});

it('the last permitted regrind, sent twice, counts once and is known the second time', () => {
  for (const entryId of ['regrind-1', 'regrind-2']) {
    must(send.move('B-56-01', 'regrind'));
    must(send.renew('B-56-01', { entryId }));
  }
  const before = dump(db);
  expect(must(send.renew('B-56-01', { entryId: 'regrind-2' })).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
  must(send.move('B-56-01', 'regrind'));
  // source: hand. The blade's part permits two regrinds.
  expect(sentence(send.renew('B-56-01'))).toBe('B-56-01 has reached its limit of 2 regrinds; scrap it.');
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'BDY-A', BODY);
  receive(db, 'D-56-02', DIE);
  must(send.end('D-56-02', 'worn', 'quarantined'));
  receive(db, 'D-56-03', DIE);
  must(send.move('D-56-03', 'lost'));
  receive(db, 'D-56-04', DIE);
  must(send.move('D-56-04', 'scrapped'));
  const before = dump(db);
  expect([
    sentence(send.end('BDY-A', 'worn', 'scrapped')),
    sentence(send.end('D-56-01', 'worn', 'regrind')),
    sentence(send.end('D-56-02', 'worn', 'scrapped')),
    sentence(send.end('D-56-03', 'worn', 'scrapped')),
    sentence(send.end('D-56-04', 'worn', 'quarantined')),
    sentence(send.renew('D-56-01')),
    sentence(send.renew('B-56-01')),
  ]).toEqual([
    'BDY-A has no cutting edge.',
    'Only blades are reground.',
    'The edge of D-56-02 was already taken out of service.',
    'D-56-03 is lost; say that it was found first.',
    'D-56-04 is scrapped; reverse that entry if it was a mistake.',
    'D-56-01 is not a blade; only blades are reground.',
    'B-56-01 is in the crib; send it out for regrind first.',
  ]);
  expect(dump(db)).toEqual(before);
});
