import { beforeEach, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { findKit, findKitOfTool, listKits } from '@/db/queries/kits';
import { ASH, DIE, dump, must, RING, receive, sentence, testShop } from '../../support/db';
import { kitSender, LEE, THREADS_JOB } from '../../support/kit-shop';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;
let kits: ReturnType<typeof kitSender>;
let kitId: string;

// source: hand. A kit is closable only when complete, or lost with approval; broken pieces are accounted for first.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  kits = kitSender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-1', RING);
  must(send.plan(THREADS_JOB));
  kitId = must(kits.issueKit(['D-56-01', 'G-56-GO-1'])).id;
});

it('Q16: a kit without its ring is not complete; the search names it; only a lead closes it with the loss', () => {
  must(send.giveBack('D-56-01'));
  expect(findKitOfTool(db, 'G-56-GO-1')?.id).toBe(kitId);
  expect(findKitOfTool(db, 'D-56-01')).toBeUndefined();
  expect(sentence(kits.close(kitId))).toBe('Still out: G-56-GO-1. Scan them back, or search for them.');
  must(kits.search(kitId, ['G-56-GO-1']));
  expect(findKit(db, kitId)).toMatchObject({ missingToolIds: ['G-56-GO-1'], lastSeen: 'bench 4' });
  const withReason = { reason: 'bench, floor and bin searched' };
  const before = dump(db);
  expect(sentence(kitSender(db, ASH).close(kitId, ['G-56-GO-1'], withReason))).toBe(
    'A lead or quality closes a kit with something lost.',
  );
  expect(sentence(kitSender(db, LEE).close(kitId, ['G-56-GO-1']))).toBe(
    'Say where was searched, in a few words.',
  );
  expect(dump(db)).toEqual(before);
  must(kitSender(db, LEE).close(kitId, ['G-56-GO-1'], withReason));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'lost', kit_id: null });
  expect(listKits(db)).toEqual([]);
  expect(listKits(db, { all: true })).toMatchObject([
    { status: 'lost-approved', lostToolIds: ['G-56-GO-1'] },
  ]);
  replayedEqualsKept(db);
});

it('with everything back it is put away complete, once', () => {
  must(send.giveBack('D-56-01'));
  must(send.giveBack('G-56-GO-1', { condition: 'unsure' }));
  must(kits.close(kitId));
  expect(sentence(kits.close(kitId))).toBe('This kit was already put away.');
  expect(sentence(kits.search(kitId, ['D-56-01']))).toBe('This kit was already put away.');
});

it('what is back cannot be given up as lost', () => {
  must(send.giveBack('D-56-01'));
  expect(sentence(kitSender(db, LEE).close(kitId, ['D-56-01', 'G-56-GO-1'], { reason: 'searched' }))).toBe(
    'D-56-01 is not out with this kit.',
  );
});

it('a broken die keeps the kit open until its pieces are accounted for', () => {
  must(send.end('D-56-01', 'teeth-broken-worn', 'quarantined', { pieces: 'owed' }));
  must(send.giveBack('G-56-GO-1'));
  expect(sentence(kits.close(kitId))).toBe('Account for every piece of D-56-01 before the kit is put away.');
});

it('closing with a loss can be taken back, and the lost item is out again', () => {
  must(send.giveBack('D-56-01'));
  const { id } = must(kitSender(db, LEE).close(kitId, ['G-56-GO-1'], { reason: 'searched' }));
  must(send.reverse(id));
  expect(findKit(db, kitId)?.status).toBe('out');
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'issued', kit_id: kitId });
  replayedEqualsKept(db);
});
