import { expect, it } from 'vitest';
import { entryOfRow, findEntryRow, standingEntries } from '@/db/ledger/entry-row';
import { DIE, must, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

it('a subject’s standing entries are its own, in order, without reversals and what they took back', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'D-56-02', DIE);
  const send = sender(db);
  const slip = must(send.cut('D-56-01', 7));
  must(send.cut('D-56-01', 2));
  must(send.reverse(slip.id));
  const entries = standingEntries(db.$client, 'tool', 'D-56-01');
  expect(entries.map((entry) => entry.kind)).toEqual(['tool-received', 'cut-logged']);
  expect(entries[1]?.payload).toMatchObject({ ends: 2 });
});

it('finds one row by its entry ID, and reads it as an entry', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const cut = must(sender(db).cut('D-56-01', 7));
  const row = findEntryRow(db.$client, cut.id);
  expect(row && entryOfRow(row)).toMatchObject({
    ...{ id: cut.id, seq: cut.seq, kind: 'cut-logged', subjectId: 'D-56-01', actorId: 'robin' },
    payload: { ends: 7 },
  });
  expect(findEntryRow(db.$client, 'no-such-entry')).toBeUndefined();
});
