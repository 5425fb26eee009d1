import { beforeEach, expect, it } from 'vitest';
import { accountPieces } from '@/db/commands/care-for-tool';
import type { Db } from '@/db/open';
import { listPiecesMissing, listPiecesOwed, listPiecesOwedOn } from '@/db/queries/pieces-owed';
import { readShopFacts } from '@/db/queries/shop-facts';
import { AccountPiecesInput } from '@/lib/shop/kit-input';
import { DIE, ENV, entered, may, must, receive, testShop } from '../../support/db';
import { LEE, THREADS_JOB } from '../../support/kit-shop';
import { sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;
const account = (toolId: string, allFound: boolean) =>
  accountPieces(
    db,
    may('return-tool', LEE),
    AccountPiecesInput.parse({ ...entered(), toolId, allFound, where: 'bench, floor, bore' }),
    ENV,
  );

// source: hand. TRADE: stop, and account for every piece before the tube or the bench is released.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'D-56-02', DIE);
  must(send.plan(THREADS_JOB));
});

function breakOn(toolId: string, jobLineId: string | null): void {
  must(send.issue(toolId, { jobLineId }));
  must(send.cut(toolId, 3, { jobLineId }));
  must(send.giveBack(toolId, { condition: 'damaged', pieces: 'owed' }));
}

it('names the broken tool on the line it cut for, until its pieces are found', () => {
  expect(listPiecesMissing(db, 'J-7.1')).toEqual([]);
  breakOn('D-56-01', 'J-7.1');
  expect(listPiecesOwed(db)).toEqual(['D-56-01']);
  expect(listPiecesMissing(db, 'J-7.1')).toEqual([{ toolId: 'D-56-01', pieces: 'owed' }]);
  must(account('D-56-01', true));
  expect(listPiecesOwed(db)).toEqual([]);
  expect(listPiecesMissing(db, 'J-7.1')).toEqual([]);
});

it('a search that was given up is no longer owed, but stays with the line', () => {
  breakOn('D-56-01', 'J-7.1');
  must(account('D-56-01', false));
  expect(listPiecesOwed(db)).toEqual([]);
  expect(listPiecesMissing(db, 'J-7.1')).toEqual([{ toolId: 'D-56-01', pieces: 'not-found' }]);
});

it('a tool that broke on other work is not of this line', () => {
  breakOn('D-56-02', null);
  expect(listPiecesOwed(db)).toEqual(['D-56-02']);
  expect(listPiecesMissing(db, 'J-7.1')).toEqual([]);
});

it('the line in the record says whose pieces it waits for, until they are found or given up', () => {
  const owedOn = () => {
    const line = readShopFacts(db, { today: '2026-03-02' }).lines.find(({ id }) => id === 'J-7.1');
    expect(line?.piecesOwed).toEqual(listPiecesOwedOn(db, 'J-7.1'));
    return line?.piecesOwed;
  };
  expect(owedOn()).toEqual([]);
  breakOn('D-56-01', 'J-7.1');
  breakOn('D-56-02', null);
  expect(owedOn()).toEqual(['D-56-01']);
  must(account('D-56-01', false));
  expect(owedOn()).toEqual([]);
});
