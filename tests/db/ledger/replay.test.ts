import { expect, it } from 'vitest';
import { issueTool } from '@/db/commands/issue-tool';
import { replay } from '@/db/ledger/replay';
import { DIE, dump, ENV, entered, may, must, receive, testDb, testShop } from '../../support/db';

it('derives every kept table anew, row for row', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const issue = { ...entered(), toolId: 'D-56-01', toPersonId: 'ash', jobLineId: 'J-1.1', bench: '4' };
  must(issueTool(db, may('issue-tool'), issue, ENV));
  const again = testDb();
  replay(db, again);
  expect(dump(again)).toEqual(dump(db));
  expect(dump(again).tool).toHaveLength(1);
});

it('would show a kept table that had drifted', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  db.$client.prepare(`UPDATE tool SET lot = 'changed by hand'`).run();
  const again = testDb();
  replay(db, again);
  expect(dump(again)).not.toEqual(dump(db));
});

it('requires a fresh database', () => {
  const db = testShop();
  expect(() => replay(db, testShop())).toThrow('replay requires a fresh database');
});
