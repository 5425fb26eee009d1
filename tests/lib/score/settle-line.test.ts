import { expect, it } from 'vitest';
import { type LineRowCut, settleLineEdges } from '@/lib/score/settle-line';

const row = (goodEnds: number, over: Partial<LineRowCut> = {}): LineRowCut => ({
  ...{ atMs: 1, operation: 'thread', goodEnds, furtherEdge: false, woreOut: false, ...over },
});
const lacking = { thread: 10 };
const settle = (rows: LineRowCut[], ended: Parameters<typeof settleLineEdges>[0]['ended'] = null) =>
  settleLineEdges({ rows, lacking, ended });

// source: hand. The rule: what was counted on lasted, whether one edge did or a spare took over.
it('is true when the edges that were counted on made all its ends', () => {
  expect(settle([row(6), row(4, { atMs: 2 })])).toEqual({
    outcome: true,
    reason: 'no-edge-wore-out',
    atMs: 2,
  });
  expect(settle([row(6, { woreOut: true }), row(4)])).toMatchObject({
    outcome: true,
    reason: 'spare-took-over',
  });
  expect(settle([row(10, { furtherEdge: true })])).toMatchObject({ outcome: true });
  expect(settle([row(6), row(4, { woreOut: true })])).toMatchObject({ outcome: true });
});

// source: hand. An edge wore out, and one had to be fetched that nobody had counted on.
it('is false when one wore out and a further edge was needed', () => {
  const rows = [row(6, { woreOut: true }), row(4, { furtherEdge: true, atMs: 3 })];
  expect(settle(rows)).toEqual({ outcome: false, reason: 'further-edge', atMs: 3 });
});

// source: hand. Both cuts have to be made; nothing is learnt from a line that ended before; an open one is open.
it('waits for every cut, and is void when the line ended before', () => {
  const both = { cone: 4, thread: 4 };
  const cones = row(4, { operation: 'cone' });
  expect(settleLineEdges({ rows: [row(9)], lacking: both, ended: null })).toBeUndefined();
  expect(settleLineEdges({ rows: [row(4), cones], lacking: both, ended: null })).toMatchObject({
    outcome: true,
  });
  for (const how of ['closed-short', 'cancelled', 'changed'] as const)
    expect(settle([row(6)], { how, atMs: 5 })).toEqual({ outcome: null, reason: how, atMs: 5 });
  expect(settle([row(6), row(4, { atMs: 9 })], { how: 'changed', atMs: 5 })).toMatchObject({ outcome: null });
  expect(settle([row(6), row(4, { atMs: 9 })], { how: 'closed-short', atMs: 5 })).toMatchObject({
    outcome: true,
  });
});
