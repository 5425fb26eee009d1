import { expect, it } from 'vitest';
import { ruleCounts } from '@/lib/end-costs/rule-counts';
import type { CarryOn } from '@/lib/replacement/carry-on';
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
const money = (changeFirst: boolean): CarryOn => ({
  ...{ finishes: 0.5, workCost: 2_000, usedCost: 1_500, extraCost: 5_000, breakEven: 0.7, changeFirst },
});
const said = (at: number, changeFirst: boolean, countPassed: boolean): BacktestCase => ({
  prediction: {
    ...{ id: `${at}:1:D`, madeAtMs: 0, kind: 'tool-finishes', probability: 0.5, what: {}, settled: null },
  },
  ...{ row, exposure: [], wornSoFar: 0 },
  change: { workEnds: 40, countPassed, carryOn: money(changeFirst) },
});
const plain = () => 1;

// source: hand. Three rows of 40 at 10 turns; the count says "change" before the third: planned at 80 ends, 800 turns. The estimate never
// does: worn out in the third, in mid-job, after 120.
it('plays each rule on the edges of the log', () => {
  const cases = [said(0, false, false), said(1, false, false), said(2, false, true)];
  const [found] = ruleCounts([began, row, row, row, worn], cases, plain);
  expect(found).toMatchObject({
    ...{ partId: 'die', kind: 'die', edges: 1, ends: 120, wear: 1200 },
    predicted: { planned: 0, midJob: 1, ends: 120 },
    fixed: { planned: 1, midJob: 0, ends: 80 },
    cycles: {
      predicted: [{ ends: 120, wear: 1200, end: 'mid-job' }],
      fixed: [{ ends: 80, wear: 800, end: 'planned' }],
    },
    usual: { workEnds: 40, workMinor: 2_000, extraMinor: 5_000 },
  });
  const warned = [said(0, false, false), said(1, false, false), said(2, true, false)];
  expect(ruleCounts([began, row, row, row, worn], warned, plain)[0]).toMatchObject({
    predicted: { planned: 1, midJob: 0, ends: 80 },
    fixed: { planned: 0, midJob: 1, ends: 120 },
  });
});

// source: hand. A new edge is not changed before its first row; a chipped one is lost in mid-job like a worn one; one taken out while good
// has lasted at least so long. A material three times as hard counts three times.
it('reads every end of an edge for what it cost', () => {
  const endOf = (how: 'incident' | 'removed-working' | 'lost') =>
    ruleCounts([began, row, { ...worn, how } as LogEvent], [said(0, true, true)], () => 3)[0]?.cycles
      .predicted;
  expect(endOf('incident')).toEqual([{ ends: 40, wear: 1200, end: 'mid-job' }]);
  expect(endOf('removed-working')).toEqual([{ ends: 40, wear: 1200, end: 'open' }]);
  expect(endOf('lost')).toEqual([{ ends: 40, wear: 1200, end: 'open' }]);
});

// source: hand. Without a count or a price there is nothing to compare.
it('leaves out parts without a fixed count or a price', () => {
  expect(ruleCounts([began, row], [], plain)).toEqual([]);
  const noCount = {
    ...said(0, false, false),
    change: { workEnds: 40, countPassed: undefined, carryOn: money(false) },
  };
  expect(ruleCounts([began, row], [noCount], plain)).toEqual([]);
  const noPrice = {
    ...said(0, false, false),
    change: { workEnds: 40, countPassed: false, carryOn: undefined },
  };
  expect(ruleCounts([began, row], [noPrice], plain)).toEqual([]);
});
