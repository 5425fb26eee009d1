import { expect, it } from 'vitest';
import { listCountedTools } from '@/db/queries/counted-tools';
import { DIE, must, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. A tool lies in the drawer of the sizes that its part is for, wherever the tool is now.
it('gives every tool with the sizes of its part', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'D-56-02', DIE);
  must(sender(db).move('D-56-02', 'lost'));
  const sizes = [...DIE.fitsConnectionIds].sort();
  expect(sizes).not.toEqual([]);
  expect(
    listCountedTools(db).map(({ id, state, connectionIds }) => [id, state, [...connectionIds].sort()]),
  ).toEqual([
    ['D-56-01', 'in-crib', sizes],
    ['D-56-02', 'lost', sizes],
  ]);
});
