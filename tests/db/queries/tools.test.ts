import { beforeEach, describe, expect, it } from 'vitest';
import type { Db } from '@/db/open';
import { findTool, listCuts, listEdges, listTools } from '@/db/queries/tools';
import { BLADE, BODY, DIE, HIGH, MEDIUM, must, NOW_MS, RING, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-02', DIE);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'BDY-O1', BODY);
});

// source: hand. Stated cases.
describe('listTools', () => {
  const ids = (filter?: Parameters<typeof listTools>[1]) => listTools(db, filter).map(({ id }) => id);

  it('gives all by ID, or those of a role and a state', () => {
    must(send.issue('D-56-01'));
    expect(ids()).toEqual(['B-56-01', 'BDY-O1', 'D-56-01', 'D-56-02', 'G-56-GO-1']);
    expect(ids({ roles: ['die'] })).toEqual(['D-56-01', 'D-56-02']);
    expect(ids({ roles: ['die', 'blade'], states: ['in-crib'] })).toEqual(['B-56-01', 'D-56-02']);
    expect(ids({ roles: [] })).toEqual([]);
  });

  it('names who has it, and nobody when it is in the crib', () => {
    must(send.issue('D-56-01', { bench: '4' }));
    expect(listTools(db, { states: ['issued'] })).toMatchObject([
      { id: 'D-56-01', holderId: 'ash', holderName: 'Ash Moor', bench: '4' },
    ]);
    must(send.giveBack('D-56-01'));
    expect(findTool(db, 'D-56-01')).toMatchObject({ state: 'in-crib', holderName: null });
  });
});

// source: hand. An oily mark: O and 0, I and 1 count as one; dashes and case do not matter.
it('findTool finds a tool as it is typed or scanned', () => {
  for (const typed of ['BDY-O1', 'bdy-01', ' bdy–oi ', 'BDY 0I'])
    expect(findTool(db, typed)?.id, typed).toBe('BDY-O1');
  expect(findTool(db, 'BDY-02')).toBeUndefined();
  expect(findTool(db, '')).toBeUndefined();
});

// source: hand. 10.5 turns a high-pressure end, 9 a medium one; a recut, a dry row and a second material count apart.
describe('listEdges', () => {
  it('gives each edge what it cut, summed by size, material and condition', () => {
    must(send.cut('D-56-01', 10, { goodEnds: 8 }));
    must(send.cut('D-56-01', 2, { rework: true }));
    must(send.cut('D-56-01', 20));
    must(send.cut('D-56-01', 4, { connectionId: MEDIUM.id }));
    must(send.cut('D-56-01', 3, { dry: true, materialId: '2507' }));
    const [edge] = listEdges(db, 'D-56-01');
    const sums = edge?.use.map(({ connectionId, materialId, dry, rework, ends, goodEnds, exposureMicro }) =>
      [connectionId, materialId, dry, rework, ends, goodEnds, exposureMicro].join(' '),
    );
    expect(sums?.sort()).toEqual([
      `${HIGH.id} 2507 true false 3 3 31500000`,
      `${HIGH.id} 316 false false 30 28 315000000`,
      `${HIGH.id} 316 false true 2 2 21000000`,
      `${MEDIUM.id} 316 false false 4 4 36000000`,
    ]);
    expect(edge).toMatchObject({ edgeNo: 1, end: null, lastUse: { materialId: '2507', dry: true, ends: 3 } });
  });

  it('keeps the edges of a reground blade apart, in order, with how each ended', () => {
    must(send.cut('B-56-01', 12, { goodEnds: 11 }));
    must(send.end('B-56-01', 'worn', 'regrind'));
    must(send.renew('B-56-01'));
    expect(listEdges(db, 'B-56-01')).toMatchObject([
      { edgeNo: 1, end: 'worn', cause: 'worn', endedAtMs: NOW_MS, lastUse: { ends: 12, goodEnds: 11 } },
      { edgeNo: 2, end: null, cause: null, lastUse: null, use: [] },
    ]);
  });

  it('of all tools gives every edge, of tools without one none', () => {
    must(send.cut('D-56-02', 1));
    const edges = listEdges(db).map(({ toolId, edgeNo, use }) => [toolId, edgeNo, use.length]);
    expect(edges).toEqual([
      ['B-56-01', 1, 0],
      ['D-56-01', 1, 0],
      ['D-56-02', 1, 1],
    ]);
    expect(listEdges(db, 'BDY-O1')).toEqual([]);
  });

  it('forgets a row that was taken back', () => {
    const { id } = must(send.cut('D-56-01', 40));
    must(send.reverse(id));
    expect(listEdges(db, 'D-56-01')).toMatchObject([{ use: [], lastUse: null }]);
  });
});

// source: hand. Newest first; what was taken back stays in sight, marked.
it('listCuts gives the log of one tool', () => {
  const first = must(send.cut('D-56-01', 40));
  must(send.cut('D-56-02', 9));
  must(send.cut('D-56-01', 7, { heat: 'H2' }));
  must(send.reverse(first.id));
  const rows = listCuts(db, 'D-56-01').map(({ ends, heat, reversed, personName }) => [
    ends,
    heat,
    reversed,
    personName,
  ]);
  expect(rows).toEqual([
    [7, 'H2', false, 'Robin Vale'],
    [40, '', true, 'Robin Vale'],
  ]);
  expect(listCuts(db, 'D-56-01', 1)).toHaveLength(1);
});
