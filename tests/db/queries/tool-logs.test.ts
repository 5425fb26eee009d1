import { expect, it } from 'vitest';
import { listToolLogs } from '@/db/queries/tool-logs';
import { BLADE, DIE, must, RING, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. Three tools with an edge or without; a row taken back and the entry that took it back both vanish.
it('lists the standing entries of every tool with an edge, in order', () => {
  const db = testShop();
  const send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  receive(db, 'G-56-GO-1', RING);
  must(send.cut('D-56-01', 4));
  const slip = must(send.cut('D-56-01', 9));
  must(send.cut('B-56-01', 2));
  must(send.reverse(slip.id));
  must(send.cut('D-56-01', 5));
  const logs = listToolLogs(db);
  expect(logs.map(({ toolId, partId }) => [toolId, partId])).toEqual([
    ['B-56-01', BLADE.id],
    ['D-56-01', DIE.id],
  ]);
  const ends = logs.map(({ entries }) =>
    entries.map((entry) => (entry.kind === 'cut-logged' ? entry.payload.ends : entry.kind)),
  );
  expect(ends).toEqual([
    ['tool-received', 2],
    ['tool-received', 4, 5],
  ]);
});

// source: hand. Stated.
it('of a shop without tools is nothing', () => {
  expect(listToolLogs(testShop())).toEqual([]);
});
