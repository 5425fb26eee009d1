import { expect, it } from 'vitest';
import { logCut } from '@/db/commands/log-cut';
import { replay } from '@/db/ledger/replay';
import { LogCutInput } from '@/lib/shop/command-input';
import { DIE, dump, ENV, entered, HIGH, may, must, receive, sentence, testDb, testShop } from '../support/db';

it('a full disk refuses the entry with a sentence, leaves nothing of it, and keeps all that was acknowledged', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const pages = db.$client.pragma('page_count', { simple: true }) as number;
  db.$client.pragma(`max_page_count = ${pages + 2}`);
  const acknowledged: string[] = [];
  let before = dump(db);
  let answer = log();
  while (answer.ok && acknowledged.length < 5000) {
    acknowledged.push(answer.value.id);
    before = dump(db);
    answer = log();
  }
  expect(sentence(answer)).toBe('Nothing was changed: the disk is full. Make room, then enter it again.');
  expect(dump(db)).toEqual(before);
  expect(before.cut).toHaveLength(acknowledged.length);
  expect(acknowledged.length).toBeGreaterThan(0);
  const again = testDb();
  replay(db, again);
  expect(dump(again)).toEqual(dump(db));

  db.$client.pragma(`max_page_count = ${pages + 100}`);
  must(log());
  expect(dump(db).cut).toHaveLength(acknowledged.length + 1);

  function log() {
    const row = { toolId: 'D-56-01', connectionId: HIGH.id, materialId: '316', ends: 3, goodEnds: 3 };
    return logCut(
      db,
      may('log-cut'),
      LogCutInput.parse({ ...entered(), ...row, reason: 'x'.repeat(300) }),
      ENV,
    );
  }
});
