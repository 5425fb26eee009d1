import { beforeEach, expect, it } from 'vitest';
import { readEdge } from '@/db/commands/read-edge';
import type { Db } from '@/db/open';
import { listEdges } from '@/db/queries/tools';
import { ReadEdgeInput } from '@/lib/shop/command-input';
import { DIE, ENV, entered, may, must, RING, receive, sentence, testShop } from '../../support/db';
import { sender } from '../../support/send';

let db: Db;
const read = (toolId: string, over: object = {}) => {
  const finding = { method: 'grade', grade: 'light' };
  const input = ReadEdgeInput.parse({ ...entered(), toolId, onDay: '2026-03-02', finding, ...over });
  return readEdge(db, may('read-edge'), input, ENV);
};

beforeEach(() => {
  db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-1', RING);
});

// source: hand. A reading keeps what the edge had cut when it was taken; what is cut later does not change it.
it('is kept with the edge and with what it had cut by then', () => {
  const send = sender(db);
  must(send.cut('D-56-01', 4));
  must(read('D-56-01'));
  must(send.cut('D-56-01', 3));
  const [edge] = listEdges(db, 'D-56-01');
  expect(edge?.readings).toMatchObject([
    { onDay: '2026-03-02', finding: { method: 'grade', grade: 'light' }, use: [{ ends: 4 }] },
  ]);
  expect(edge?.use).toMatchObject([{ ends: 7 }]);
});

// source: identity. Sent twice it counts once.
it('sent twice counts once', () => {
  const entryId = 'entry-read-01';
  must(read('D-56-01', { entryId }));
  must(read('D-56-01', { entryId }));
  expect(listEdges(db, 'D-56-01')[0]?.readings).toHaveLength(1);
});

// source: hand. A ring has no edge; a tool nobody knows has none either.
it('is refused for what has no edge', () => {
  expect(sentence(read('G-56-GO-1'))).not.toBe('');
  expect(sentence(read('D-NOWHERE'))).toContain('D-NOWHERE');
});

// source: hand. Taken back like any entry.
it('can be taken back', () => {
  const { id } = must(read('D-56-01'));
  must(sender(db).reverse(id));
  expect(listEdges(db, 'D-56-01')[0]?.readings).toEqual([]);
});
