import { beforeEach, expect, it } from 'vitest';
import { returnTools } from '@/db/commands/return-tools';
import type { Db } from '@/db/open';
import { findKit } from '@/db/queries/kits';
import { ReturnToolsInput } from '@/lib/shop/kit-input';
import {
  DIE,
  dump,
  ENV,
  entered,
  FLUID,
  may,
  must,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { kitSender, THREADS_JOB } from '../../support/kit-shop';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

const KIT = 'kit-000001';
let db: Db;
const back = (toolIds: readonly string[], over = {}) =>
  returnTools(db, may('return-tool'), ReturnToolsInput.parse({ ...entered(), toolIds, ...over }), ENV);

// source: hand. TRADE: a kit is back when every item was seen; an item is back once, and no list half.
beforeEach(() => {
  db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'F-L01', FLUID, { levelMl: 400 });
  must(sender(db).plan(THREADS_JOB));
  must(kitSender(db).issueKit(['D-56-01', 'G-56-GO-1', 'F-L01'], { entryId: KIT }));
});

it('takes several items back in order at once; the rest of the kit stays out', () => {
  must(back(['d-56-o1', 'F-L01']));
  for (const toolId of ['D-56-01', 'F-L01'])
    expect(row(db, 'tool', 'id', toolId)).toMatchObject({ state: 'in-crib', holder_id: null });
  expect(findKit(db, KIT)?.itemsNow.map(({ tool, out }) => [tool.id, out])).toEqual([
    ['D-56-01', false],
    ['G-56-GO-1', true],
    ['F-L01', false],
  ]);
  replayedEqualsKept(db);
});

it('one item that cannot come back refuses all of them, and nothing changes', () => {
  must(back(['G-56-GO-1']));
  const before = dump(db);
  expect(sentence(back(['D-56-01', 'G-56-GO-1']))).toContain('G-56-GO-1');
  expect(sentence(back(['D-56-01', 'X-1']))).toContain('No tool X-1 is in the record');
  expect(sentence(back(['D-56-01', 'D-56-01']))).toContain('D-56-01');
  expect(dump(db)).toEqual(before);
});

it('counts once when sent twice; the same ID with another list is refused', () => {
  const sent = { ...entered(), entryId: 'back-000001' };
  must(back(['D-56-01', 'F-L01'], sent));
  const before = dump(db);
  expect(must(back(['D-56-01', 'F-L01'], sent))).toMatchObject({ id: 'back-000001', alreadyRecorded: true });
  for (const other of [['D-56-01'], ['D-56-01', 'F-L01', 'G-56-GO-1'], ['F-L01', 'D-56-01'], ['G-56-GO-1']])
    expect(back(other, sent).ok, other.join(' ')).toBe(false);
  expect(dump(db)).toEqual(before);
});

const stateOf = (toolId: string) => row(db, 'tool', 'id', toolId)?.state;

// source: hand. What was entered as one goes back as one; nothing of it is deleted, and no list goes back half.
it('one undo takes all of them back out together, and is itself counted once', () => {
  const { id } = must(back(['D-56-01', 'G-56-GO-1', 'F-L01']));
  const undo = () => sender(db).reverse(id, { entryId: 'undo-000001' });
  must(undo());
  for (const toolId of ['D-56-01', 'G-56-GO-1', 'F-L01'])
    expect(row(db, 'tool', 'id', toolId)).toMatchObject({ state: 'issued', kit_id: KIT });
  replayedEqualsKept(db);
  const before = dump(db);
  expect(must(undo()).alreadyRecorded).toBe(true);
  expect(dump(db)).toEqual(before);
});

it('one of them can go back out by itself before the rest does', () => {
  const { id } = must(back(['D-56-01', 'G-56-GO-1', 'F-L01']));
  const second = db.$client
    .prepare(`SELECT id FROM entry WHERE kind = 'tool-returned' AND subject_id = 'G-56-GO-1'`)
    .pluck()
    .get() as string;
  must(sender(db).reverse(second));
  expect(['D-56-01', 'G-56-GO-1', 'F-L01'].map(stateOf)).toEqual(['in-crib', 'issued', 'in-crib']);
  must(sender(db).reverse(id));
  expect(['D-56-01', 'G-56-GO-1', 'F-L01'].map(stateOf)).toEqual(['issued', 'issued', 'issued']);
  replayedEqualsKept(db);
});

it('where one of them has gone on since, nothing goes back, and the refusal names it', () => {
  const { id } = must(back(['F-L01', 'D-56-01']));
  must(sender(db).issue('D-56-01'));
  const before = dump(db);
  expect(sentence(sender(db).reverse(id))).toMatch(
    /^D-56-01 came back in the same list\. Later entries rest on/,
  );
  expect(dump(db)).toEqual(before);
});
