import { expect, it } from 'vitest';
import { setNoun } from '@/db/commands/set-noun';
import { dataVersion, findEntry, listEntries, listEntriesAbout } from '@/db/queries/entries';
import { SET_UP } from '@/lib/access/actor';
import {
  DIE,
  ENV,
  envelope,
  HIGH,
  MATERIALS,
  may,
  must,
  NOW_MS,
  receive,
  testDb,
  testShop,
} from '../../support/db';
import { sender } from '../../support/send';

function shopWithHistory() {
  const db = testShop();
  const send = sender(db);
  receive(db, 'D-56-01', DIE);
  const cut = must(send.cut('D-56-01', 40, { entryId: 'the-wrong-row', deviceAtMs: NOW_MS - 60_000 }));
  const back = must(send.reverse(cut.id, { reason: 'wrong die' }));
  return { db, send, cut, back };
}

// source: hand. The newest first: taken back, cut, received.
it('listEntriesAbout tells the whole history of one thing, what was taken back included', () => {
  const { db, cut, back } = shopWithHistory();
  const entries = listEntriesAbout(db, { kind: 'tool', id: 'D-56-01', limit: 50 });
  expect(entries.map(({ kind }) => kind)).toEqual(['entry-reversed', 'cut-logged', 'tool-received']);
  expect(entries[0]).toMatchObject({
    id: back.id,
    reversesId: cut.id,
    reversedById: null,
    reason: 'wrong die',
  });
  expect(entries[1]).toMatchObject({ id: cut.id, reversesId: null, reversedById: back.id, batchId: null });
  expect(listEntriesAbout(db, { kind: 'tool', id: 'D-56-01', limit: 1 })).toHaveLength(1);
  expect(listEntriesAbout(db, { kind: 'part', id: 'D-56-01', limit: 9 })).toEqual([]);
});

// source: hand. Who, when by both clocks, and what: as it was sent.
it('findEntry gives one entry as it was sent', () => {
  const { db } = shopWithHistory();
  expect(findEntry(db, 'the-wrong-row')).toMatchObject({
    kind: 'cut-logged',
    subjectKind: 'tool',
    subjectId: 'D-56-01',
    actorName: 'Robin Vale',
    deviceAtMs: NOW_MS - 60_000,
    serverAtMs: NOW_MS,
    payload: { connectionId: HIGH.id, ends: 40, goodEnds: 40, exposureMicro: 420_000_000 },
  });
  expect(findEntry(db, 'never-was')).toBeUndefined();
});

it('what was entered before the shop had people was entered by the set-up', () => {
  const db = testDb();
  const [value] = MATERIALS;
  if (value === undefined) throw new Error('no material');
  must(setNoun(db, may('set-up-shop', SET_UP), { noun: 'material', value, envelope: envelope() }, ENV));
  expect(listEntries(db, { limit: 1 })).toMatchObject([{ actorName: 'Set-up', subjectKind: 'material' }]);
});

// source: identity. The pages put together are the ledger, each entry once.
it('listEntries pages through the ledger, newest first', () => {
  const { db } = shopWithHistory();
  const all = listEntries(db, { limit: 1000 }).map(({ seq }) => seq);
  expect(all).toEqual([...all].sort((a, b) => b - a));
  const paged: number[] = [];
  for (let page = listEntries(db, { limit: 4 }); page.length > 0; ) {
    paged.push(...page.map(({ seq }) => seq));
    page = listEntries(db, { beforeSeq: paged.at(-1) ?? 0, limit: 4 });
  }
  expect(paged).toEqual(all);
});

// source: hand. Stated.
it('dataVersion moves with every entry and with nothing else', () => {
  expect(dataVersion(testDb())).toBe(0);
  const { db, send } = shopWithHistory();
  const before = dataVersion(db);
  expect(send.cut('D-56-99', 1).ok).toBe(false);
  expect(send.reverse('the-wrong-row').ok).toBe(false);
  expect(dataVersion(db)).toBe(before);
  expect(must(send.cut('D-56-01', 1)).seq).toBe(before + 1);
  expect(dataVersion(db)).toBe(before + 1);
});
