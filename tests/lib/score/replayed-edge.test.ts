import { expect, it } from 'vitest';
import type { EdgeBegan, RowCut } from '@/lib/score/log-event';
import { exposureOf, historyOf, type ReplayedEdge, replay } from '@/lib/score/replayed-edge';
import { cut } from '@/tests/support/edge-histories';

const NAME = { toolId: 'D-1', edgeNo: 1 };
const BEGAN: EdgeBegan = {
  type: 'began',
  ...NAME,
  kind: 'die',
  partId: 'p',
  odIn: 0.375,
  regrinds: 0,
  startKnown: true,
};
const row = (ends: number, goodEnds: number): RowCut => ({
  ...{ type: 'cut', ...NAME, atMs: 1, connectionId: 'c', materialId: 'ref', dry: false, rework: false },
  ...{ ends, goodEnds, exposurePerEnd: 10 },
});

function played(...rows: RowCut[]): { edges: Map<string, ReplayedEdge>; edge: ReplayedEdge } {
  const edges = new Map<string, ReplayedEdge>();
  const edge = replay(edges, BEGAN);
  for (const one of rows) replay(edges, one);
  return { edges, edge };
}

// source: hand. 12 good ends, then 6 of 10 good: worn within the last four of them, 40 of 220 turns.
it('reads a worn edge as worn within the ends of its last row that were not good', () => {
  const { edges, edge } = played(row(12, 12), row(10, 6));
  replay(edges, { type: 'ended', ...NAME, atMs: 2, how: 'worn' });
  expect(historyOf(edge)).toMatchObject({ end: 'worn', before: [cut(120), cut(60)], during: [cut(40)] });
});

it('reads any other end, and none, as lasting beyond all it has cut', () => {
  const { edges, edge } = played(row(12, 12));
  expect(historyOf(edge)).toMatchObject({ end: 'in-service', before: [cut(120)], during: [] });
  replay(edges, { type: 'ended', ...NAME, atMs: 2, how: 'lost' });
  expect(historyOf(edge).end).toBe('removed-working');
});

it('keeps with a reading what had been cut by then', () => {
  const { edges, edge } = played(row(12, 12));
  replay(edges, { type: 'read', ...NAME, worn: 0.3, sd: 0.2 });
  replay(edges, row(5, 5));
  expect(edge.readings).toEqual([{ worn: 0.3, sd: 0.2, exposure: [cut(120)] }]);
  expect(exposureOf(edge)).toHaveLength(2);
});

it('refuses an edge that never began', () => {
  expect(() => replay(new Map(), row(1, 1))).toThrow('before it began');
});

// source: hand. What was counted when it was entered is given; an edge that ended without a row since is a finished life.
it('tells what an edge had cut when the log began to follow it', () => {
  const opening = { ...row(30, 30), opening: true };
  const { edges, edge } = played(opening, row(12, 12));
  expect(historyOf(edge)).toMatchObject({ before: [cut(300), cut(120)], entered: [cut(300)] });
  replay(edges, { type: 'ended', ...NAME, atMs: 2, how: 'worn' });
  expect(historyOf(edge).entered).toEqual([cut(300)]);
  const finished = played(opening);
  expect(historyOf(finished.edge).entered).toEqual([cut(300)]);
  replay(finished.edges, { type: 'ended', ...NAME, atMs: 2, how: 'worn' });
  expect(historyOf(finished.edge).entered).toBeUndefined();
  expect(historyOf(played(row(12, 12)).edge).entered).toBeUndefined();
});
