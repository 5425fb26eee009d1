import { expect, it } from 'vitest';
import { ruleCounts } from '@/lib/end-costs/rule-counts';
import type { BacktestCase } from '@/lib/score/backtest';
import type { LogEvent, RowCut } from '@/lib/score/log-event';

const name = { toolId: 'D', edgeNo: 1 };
const began: LogEvent = {
  ...name,
  ...{ type: 'began', kind: 'die', partId: 'die', odIn: 0.5, regrinds: 0, startKnown: true },
};
const row: RowCut = {
  ...name,
  ...{ type: 'cut', atMs: 0, connectionId: 'S', materialId: 'M', dry: false, rework: false },
  ...{ ends: 40, goodEnds: 40, exposurePerEnd: 10 },
};
const worn: LogEvent = { ...name, type: 'ended', atMs: 1, how: 'worn' };
const said = (at: number, probability: number, fixedCount: 0 | 1): BacktestCase => ({
  prediction: {
    ...{
      id: `${at}:1:D`,
      madeAtMs: 0,
      kind: 'tool-finishes',
      probability,
      fixedCount,
      what: {},
      settled: null,
    },
  },
  ...{ row, exposure: [], wornSoFar: 0 },
});

// source: hand. Three rows of 40; the count of 100 says "change" before the third: planned at 80 ends. The estimate never
// falls below even chances: worn out in the third, in mid-job, after 120.
it('plays each rule on the edges of the log', () => {
  const cases = [said(0, 0.99, 1), said(1, 0.9, 1), said(2, 0.7, 0)];
  expect(ruleCounts([began, row, row, row, worn], cases)).toEqual([
    {
      ...{ partId: 'die', kind: 'die', edges: 1 },
      predicted: { planned: 0, midJob: 1, ends: 120 },
      fixed: { planned: 1, midJob: 0, ends: 80 },
    },
  ]);
  const warned = [said(0, 0.99, 1), said(1, 0.9, 1), said(2, 0.3, 1)];
  expect(ruleCounts([began, row, row, row, worn], warned)[0]).toMatchObject({
    predicted: { planned: 1, midJob: 0, ends: 80 },
    fixed: { planned: 0, midJob: 1, ends: 120 },
  });
});

it('counts an edge that still cuts with its ends only, and leaves out parts without a fixed count', () => {
  expect(ruleCounts([began, row], [said(0, 0.9, 1)])[0]?.predicted).toEqual({
    planned: 0,
    midJob: 0,
    ends: 40,
  });
  expect(ruleCounts([began, row], [])).toEqual([]);
});
