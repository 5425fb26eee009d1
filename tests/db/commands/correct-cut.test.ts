import { beforeEach, expect, it } from 'vitest';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import {
  BLADE,
  DIE,
  dump,
  ENV,
  envelope,
  HIGH,
  may,
  must,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { sender } from '../../support/send';

/** Ten turns to an end, to open the dies at round figures. */
const TEN = { ...HIGH, id: '9-16-ten', threadLengthMm: (10 / 18) * 25.4 };

let db: Db;
let send: ReturnType<typeof sender>;

/** D-56-04 has 500 turns behind it and D-56-06 700. */
beforeEach(() => {
  db = testShop();
  send = sender(db);
  const set = (noun: Parameters<typeof setNoun>[2]) => must(setNoun(db, may('set-up-shop'), noun, ENV));
  set({ noun: 'connection', value: TEN, envelope: envelope() });
  set({ noun: 'part', value: { ...DIE, fitsConnectionIds: [HIGH.id, TEN.id] }, envelope: envelope() });
  const opening = { known: 'counted', connectionId: TEN.id, materialId: '316' } as const;
  receive(db, 'D-56-04', DIE, { opening: { ...opening, ends: 50 } });
  receive(db, 'D-56-06', DIE, { opening: { ...opening, ends: 70 } });
});

function turns(toolId: string): number {
  const sql = 'SELECT SUM(exposure_micro) FROM edge_use WHERE tool_id = ?';
  return (db.$client.prepare(sql).pluck().get(toolId) as number) / 1e6;
}

// source: hand. 40 ends × 10.5 turns = 420 turns: 500 + 420 = 920 booked wrongly, 700 + 420 = 1120 is right.
it('Q4: 40 ends logged on the wrong die: both lives come right, and both entries stay to be seen', () => {
  const wrong = must(send.cut('D-56-04', 40, { reason: 'end of shift' }));
  expect([turns('D-56-04'), turns('D-56-06')]).toEqual([920, 700]);
  const right = must(send.correct(wrong.id, 'd 56-06'));
  expect([turns('D-56-04'), turns('D-56-06')]).toEqual([500, 1120]);

  const log = db.$client.prepare('SELECT entry_id, tool_id, reversed FROM cut ORDER BY seq').all();
  expect(log).toEqual([
    { entry_id: wrong.id, tool_id: 'D-56-04', reversed: 1 },
    { entry_id: right.id, tool_id: 'D-56-06', reversed: 0 },
  ]);
  const [original, back, again] = db.$client
    .prepare(
      `SELECT id, kind, reverses_id, reason, payload ->> 'correctsId' AS corrects FROM entry ORDER BY seq DESC LIMIT 3`,
    )
    .all()
    .reverse() as Record<string, unknown>[];
  expect(original).toMatchObject({ id: wrong.id, kind: 'cut-logged' });
  expect(back).toMatchObject({
    kind: 'entry-reversed',
    reverses_id: wrong.id,
    reason: 'logged on the wrong tool',
  });
  expect(again).toMatchObject({ id: right.id, kind: 'cut-logged', corrects: wrong.id });
});

it('with no right tool the row is only taken back', () => {
  const wrong = must(send.cut('D-56-04', 40));
  must(send.correct(wrong.id, null));
  expect([turns('D-56-04'), turns('D-56-06')]).toEqual([500, 700]);
});

it.each(['correct-1', 'x'.repeat(64)])('sent twice under ID %s it counts once', (entryId) => {
  const wrong = must(send.cut('D-56-04', 40));
  must(send.correct(wrong.id, 'D-56-06', { entryId }));
  const before = dump(db);
  expect(must(send.correct(wrong.id, 'D-56-06', { entryId })).alreadyRecorded).toBe(true);
  must(send.end('D-56-06', 'worn', 'scrapped'));
  expect(must(send.correct(wrong.id, 'D-56-06', { entryId })).alreadyRecorded).toBe(true);
  expect(dump(db).cut).toEqual(before.cut);
});

it('two long IDs that begin alike do not run together', () => {
  const [one, two] = [must(send.cut('D-56-04', 1)), must(send.cut('D-56-04', 2))];
  must(send.correct(one.id, 'D-56-06', { entryId: `${'x'.repeat(63)}1` }));
  must(send.correct(two.id, 'D-56-06', { entryId: `${'x'.repeat(63)}2` }));
  // source: hand. 3 ends × 10.5 = 31.5 turns moved.
  expect([turns('D-56-04'), turns('D-56-06')]).toEqual([500, 731.5]);
});

it('a mended row can be taken back in its turn, and the first stays taken back', () => {
  const wrong = must(send.cut('D-56-04', 40));
  const right = must(send.correct(wrong.id, 'D-56-06'));
  must(send.reverse(right.id));
  expect([turns('D-56-04'), turns('D-56-06')]).toEqual([500, 700]);
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'B-56-01', BLADE);
  receive(db, 'D-56-09', DIE);
  must(send.end('D-56-09', 'worn', 'scrapped'));
  const wrong = must(send.cut('D-56-04', 40));
  const before = dump(db);
  expect([
    sentence(send.correct('no-such-entry', 'D-56-06')),
    sentence(send.correct(wrong.id, 'D-56-04')),
    sentence(send.correct(wrong.id, 'D-99-99')),
    sentence(send.correct(wrong.id, 'B-56-01')),
    sentence(send.correct(wrong.id, 'D-56-09')),
    sentence(send.correct(wrong.id, 'D-56-06', { entryId: wrong.id })),
  ]).toEqual([
    'There is no such row of the cut log.',
    'That is the tool it is logged on already.',
    'No tool D-99-99 is in the record. Check the mark, or receive it first.',
    'B-56-01 cannot have cut this: it was threading.',
    'D-56-09 has no edge left in service; nothing more can be cut with it.',
    'This entry ID was already used for something else.',
  ]);
  expect(dump(db)).toEqual(before);
  must(send.correct(wrong.id, 'D-56-06'));
  expect(sentence(send.correct(wrong.id, 'D-56-06'))).toBe('This entry was already taken back.');
});
