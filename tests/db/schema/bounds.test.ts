import { expect, it } from 'vitest';
import { logCut } from '@/db/commands/log-cut';
import { LogCutInput } from '@/lib/shop/command-input';
import { BLADE, DIE, dump, ENV, entered, HIGH, may, must, receive, testShop } from '../../support/db';

function filled() {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  const row = { toolId: 'D-56-01', connectionId: HIGH.id, materialId: '316', ends: 3, goodEnds: 3 };
  must(logCut(db, may('log-cut'), LogCutInput.parse({ ...entered(), ...row }), ENV));
  return db;
}

const BAD = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1];

it.each([
  ['connection', 'tpi'],
  ['connection', 'thread_length_mm'],
  ['connection', 'cone_angle_deg'],
  ['connection', 'nose_mm'],
  ['connection', 'od_num'],
  ['material', 'factor'],
  ['material', 'factor_give_or_take'],
  ['edge', 'edge_no'],
  ['edge_use', 'ends'],
  ['edge_use', 'exposure_micro'],
  ['cut', 'ends'],
  ['cut', 'good_ends'],
  ['cut', 'exposure_micro'],
  ['part', 'regrind_limit'],
])('%s.%s takes no figure that is not a number, is without end, or is negative', (table, column) => {
  const { $client } = filled();
  const rows = $client.prepare(`SELECT COUNT(*) FROM ${table}`).pluck().get() as number;
  expect(rows).toBeGreaterThan(0);
  for (const bad of BAD) {
    expect(() => $client.prepare(`UPDATE ${table} SET ${column} = ?`).run(bad), String(bad)).toThrow(
      /constraint failed|cannot store/,
    );
  }
});

it('a sum past the whole numbers that can be held exactly is refused', () => {
  const { $client } = filled();
  expect(() => $client.prepare('UPDATE edge_use SET exposure_micro = 9007199254740992').run()).toThrow(
    'CHECK',
  );
});

it.each([
  ['an edge that is over has its cause and its moment', `UPDATE edge SET end = 'worn'`],
  ['a tool in the crib has no holder', `UPDATE tool SET holder_id = 'ash'`],
  ['an issued tool has a holder', `UPDATE tool SET state = 'issued'`],
  ['a state is one of seven', `UPDATE tool SET state = 'asleep'`],
  ['good ends are at most ends', 'UPDATE cut SET good_ends = ends + 1'],
  ['text is no number', `UPDATE cut SET ends = 'many'`],
  ['a use belongs to an edge', `UPDATE edge_use SET edge_no = 9`],
  ['a fit names a connection of the table', `UPDATE part_fit SET connection_id = 'none'`],
])('the database itself holds: %s', (_rule, sql) => {
  expect(() => filled().$client.exec(sql)).toThrow(/constraint failed|cannot store/);
});

it.each([
  ['changed', `UPDATE entry SET reason = 'another'`, 'the ledger is append-only: an entry is never changed'],
  ['removed', 'DELETE FROM entry', 'the ledger is append-only: an entry is never removed'],
  [
    'replaced',
    `INSERT OR REPLACE INTO entry SELECT seq, id, kind, subject_kind, subject_id, 'someone', device_at_ms,
       server_at_ms, reason, payload, reverses_id, batch_id FROM entry LIMIT 1`,
    'the ledger is append-only: an entry is never replaced',
  ],
  [
    'replaced under its ID',
    `INSERT OR REPLACE INTO entry SELECT NULL, id, kind, subject_kind, subject_id, 'someone', device_at_ms,
       server_at_ms, reason, payload, reverses_id, batch_id FROM entry LIMIT 1`,
    'the ledger is append-only: an entry is never replaced',
  ],
])('an entry cannot be %s', (_how, sql, message) => {
  const db = filled();
  const before = dump(db);
  expect(() => db.$client.exec(sql)).toThrow(message);
  expect(dump(db)).toEqual(before);
});
