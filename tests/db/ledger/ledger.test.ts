import { expect, it } from 'vitest';
import { write } from '@/db/ledger/write';
import { ok } from '@/lib/result';
import { DIE, ENV, envelope, may, must, receive, testShop } from '../../support/db';

it('moves a record forward inside one transaction, and saves it once at the end', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const issue = { toPersonId: 'ash', jobLineId: null, bench: '' };
  const states = write(db, may('issue-tool'), ENV, (ledger) => {
    const state = () => ledger.find('tool', 'D-56-01')?.state;
    const seen = [state()];
    must(ledger.record({ ...envelope(), kind: 'tool-issued', subjectId: 'D-56-01', payload: issue }));
    seen.push(state());
    must(
      ledger.record({
        ...envelope(),
        kind: 'tool-returned',
        subjectId: 'D-56-01',
        payload: { condition: 'dull' },
      }),
    );
    return ok([...seen, state()]);
  });
  expect(must(states)).toEqual(['in-crib', 'issued', 'quarantined']);
  expect(db.$client.prepare('SELECT state FROM tool').pluck().get()).toBe('quarantined');
});

it('an entry made and taken back in one transaction leaves the record as it was', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const before = db.$client.prepare('SELECT * FROM tool').get();
  const done = write(db, may('issue-tool'), ENV, (ledger) => {
    const entry = envelope();
    const issue = { toPersonId: 'ash', jobLineId: null, bench: '' };
    must(ledger.record({ ...entry, kind: 'tool-issued', subjectId: 'D-56-01', payload: issue }));
    return ledger.reverse({ ...envelope(), targetId: entry.id });
  });
  must(done);
  expect(db.$client.prepare('SELECT * FROM tool').get()).toEqual(before);
});

it('an imported row is known by its content whatever its note says; any other is not', () => {
  const db = testShop();
  const payload = { id: 'lee', name: 'Lee Fen', role: 'lead' } as const;
  const send = (id: string, reason: string, batchId: string | null) =>
    write(
      db,
      may('import-file'),
      ENV,
      (ledger) =>
        ledger.record({ ...envelope({ id, reason }), kind: 'person-set', subjectId: 'lee', payload }),
      batchId,
    );
  must(send('imported-1', 'people.csv', 'batch-1'));
  expect(must(send('imported-1', 'people (2).csv', 'batch-2')).alreadyRecorded).toBe(true);
  must(send('typed-0001', 'one note', null));
  expect(send('typed-0001', 'another', null).ok).toBe(false);
});

it('every entry says who made it', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  expect(db.$client.prepare('SELECT DISTINCT actor_id FROM entry').pluck().all()).toEqual(['robin']);
});
