import { beforeEach, expect, it } from 'vitest';
import { findKit, findKitOfTool, listKits } from '@/db/queries/kits';
import { DIE, FLUID, must, RING, receive, testShop } from '../../support/db';
import { kitSender, THREADS_JOB } from '../../support/kit-shop';
import { sender } from '../../support/send';

let db: ReturnType<typeof testShop>;
let send: ReturnType<typeof sender>;
let kits: ReturnType<typeof kitSender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  kits = kitSender(db);
  for (const id of ['D-56-01', 'D-56-02', 'D-56-03']) receive(db, id, DIE);
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'F-L01', FLUID, { levelMl: 400 });
  must(send.plan(THREADS_JOB));
});

// source: hand. Two kits of five tools, one left in the crib: each kit holds its own, as they stand now.
it('gives each kit its own items, in the order in which they went out, and where they stand now', () => {
  const first = must(kits.issueKit(['G-56-GO-1', 'D-56-02']));
  const second = must(kits.issueKit(['F-L01', 'D-56-01']));
  must(send.giveBack('D-56-02'));
  const stands = (kitId: string) =>
    findKit(db, kitId)?.itemsNow.map(({ tool, out }) => [tool.id, tool.state, out]);
  expect(stands(first.id)).toEqual([
    ['G-56-GO-1', 'issued', true],
    ['D-56-02', 'in-crib', false],
  ]);
  expect(stands(second.id)).toEqual([
    ['F-L01', 'issued', true],
    ['D-56-01', 'issued', true],
  ]);
  expect(listKits(db).map(({ id, itemsNow }) => [id, itemsNow.length])).toEqual(
    [first.id, second.id].sort().map((id) => [id, 2]),
  );
  expect(findKitOfTool(db, 'D-56-01')?.id).toBe(second.id);
  expect(findKitOfTool(db, 'D-56-02')).toBeUndefined();
});

// source: hand. A die that came back and went out in another kit is out with that one only.
it('an item that went out again is out with its new kit', () => {
  const first = must(kits.issueKit(['D-56-01']));
  must(send.giveBack('D-56-01'));
  const second = must(kits.issueKit(['D-56-01']));
  expect(findKit(db, first.id)?.itemsNow.map(({ out }) => out)).toEqual([false]);
  expect(findKit(db, second.id)?.itemsNow.map(({ out }) => out)).toEqual([true]);
});

it('knows no kit that there is none of', () => {
  expect(findKit(db, 'kit-none')).toBeUndefined();
  expect(listKits(db)).toEqual([]);
  expect(findKitOfTool(db, 'X-9')).toBeUndefined();
});
