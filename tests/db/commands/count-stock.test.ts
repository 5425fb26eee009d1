import { beforeEach, expect, it } from 'vitest';
import { countStock } from '@/db/commands/count-stock';
import type { Db } from '@/db/open';
import { CountStockInput } from '@/lib/shop/kit-input';
import { DIE, dump, ENV, entered, may, must, RING, receive, sentence, testShop } from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

// source: hand. A variance is an event with a reason, never a silent fix.
beforeEach(() => {
  db = testShop();
  send = sender(db);
  for (const id of ['D-56-01', 'D-56-02', 'D-56-03', 'D-56-04']) receive(db, id, DIE);
  receive(db, 'G-56-GO-1', RING);
  must(send.issue('D-56-03'));
  must(send.move('D-56-04', 'lost'));
});

const count = (scanned: string[], variances: object[] = [], over: object = {}) =>
  countStock(
    db,
    may('move-tool'),
    CountStockInput.parse({ ...entered(), scope: 'edges', scanned, variances, ...over }),
    ENV,
  );
const variance = (toolId: string, kind: string, outcome: string) => ({
  toolId,
  kind,
  outcome,
  reason: 'bin 4 checked',
});

it('a count that agrees is one entry and moves nothing', () => {
  const { id } = must(count(['D-56-01', 'd-56-o2']));
  expect(row(db, 'stock_count', 'id', id)).toMatchObject({ expected: 2, found: 2, variances: '[]' });
  replayedEqualsKept(db);
});

it('each difference is settled as said, with its reason on the tool, and goes back with the count', () => {
  const { id } = must(
    count(
      ['D-56-01', 'D-56-03', 'D-56-04'],
      [
        variance('D-56-02', 'missing', 'lost'),
        variance('D-56-03', 'unexpected', 'in-crib'),
        variance('D-56-04', 'unexpected', 'left'),
      ],
    ),
  );
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({
    state: 'lost',
    state_reason: 'stock-take: bin 4 checked',
  });
  expect(row(db, 'tool', 'id', 'D-56-03')).toMatchObject({ state: 'in-crib', holder_id: null });
  expect(row(db, 'tool', 'id', 'D-56-04')).toMatchObject({ state: 'lost' });
  replayedEqualsKept(db);
  must(send.reverse(id));
  expect(row(db, 'tool', 'id', 'D-56-02')).toMatchObject({ state: 'in-crib' });
  expect(row(db, 'tool', 'id', 'D-56-03')).toMatchObject({ state: 'issued' });
  replayedEqualsKept(db);
});

it('refuses what nobody explained, what is no difference, and what is not ours; nothing changes', () => {
  const before = dump(db);
  expect(sentence(count(['D-56-01']))).toBe('Say what is with D-56-02.');
  expect(sentence(count(['D-56-01', 'D-56-02'], [variance('D-56-02', 'missing', 'lost')]))).toBe(
    'D-56-02 has moved since it was counted. Load the count again.',
  );
  expect(sentence(count(['D-56-01', 'D-56-02', 'X-1']))).toMatch(/^Not in the record: X-1\./);
  expect(sentence(count(['D-56-01'], [variance('D-56-02', 'missing', 'in-crib')]))).toBe(
    'D-56-02: that does not follow from the count.',
  );
  expect(dump(db)).toEqual(before);
});
