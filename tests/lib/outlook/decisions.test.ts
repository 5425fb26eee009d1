import { expect, it } from 'vitest';
import { type Decision, decisions } from '@/lib/outlook/decisions';
import { blocker, lineFacts, orderFacts, shopRecord, toolFacts, verdict } from '../../support/shop-record';

const keys = (list: readonly Decision[]) =>
  list.map((one) =>
    one.kind === 'line'
      ? one.line.id
      : one.kind === 'order-late'
        ? one.order.id
        : `${one.tool.id} ${one.onDay}`,
  );

const lines = ['J-1.1', 'J-2.1', 'J-3.1', 'J-4.1'].map((id, i) =>
  lineFacts({ id, jobId: id.slice(0, 3), startOnDay: `2026-03-1${i}`, dueOnDay: `2026-03-1${i + 1}` }),
);

// source: hand. The order of cost is the one that the doc comment states; the days are counted off by hand.
it('puts what cannot be cut first, then what cannot be accepted, then risk, then late orders', () => {
  const facts = shopRecord({
    lines,
    orders: [
      orderFacts({ id: 'PO-1', partId: 'die-3-8', expectedOnDay: '2026-03-01' }),
      orderFacts({ id: 'PO-2', partId: 'die-3-8', expectedOnDay: '2026-03-02' }),
    ],
  });
  const verdicts = [
    verdict({
      lineId: 'J-1.1',
      verdict: 'at-risk',
      blockers: [blocker({ kind: 'life-short', hard: false })],
    }),
    verdict({
      lineId: 'J-2.1',
      verdict: 'cannot-make-now',
      blockers: [blocker({ kind: 'quarantined', role: 'go-ring', phase: 'accept' })],
    }),
    verdict({ lineId: 'J-3.1', verdict: 'cannot-make-now', blockers: [blocker({})] }),
    verdict({ lineId: 'J-4.1' }),
  ];
  expect(keys(decisions(facts, verdicts))).toEqual(['J-3.1', 'J-2.1', 'J-1.1', 'PO-1']);
});

// source: hand. The days are counted off by hand: the week ends on 9 March; of a size without parts on the list an order is reckoned at two weeks.
it('a quote a month off stands below this week’s risk, and above it once its last day to order is here', () => {
  const quote = (startOnDay: string) => lineFacts({ id: 'J-9.1', connectionId: '1-high', startOnDay });
  const risk = lineFacts({ id: 'J-8.1', startOnDay: '2026-03-08' });
  const verdicts = [
    verdict({ lineId: 'J-9.1', verdict: 'cannot-make-now', blockers: [blocker({})] }),
    verdict({
      lineId: 'J-8.1',
      verdict: 'at-risk',
      blockers: [blocker({ kind: 'life-short', hard: false })],
    }),
  ];
  const orders = [orderFacts({ id: 'PO-1', partId: 'die-3-8', expectedOnDay: '2026-03-01' })];
  const order = (startOnDay: string) =>
    keys(decisions(shopRecord({ lines: [quote(startOnDay), risk], orders }), verdicts));
  expect(order('2026-03-30')).toEqual(['J-8.1', 'J-9.1', 'PO-1']);
  expect(order('2026-03-17')).toEqual(['J-8.1', 'J-9.1', 'PO-1']);
  expect(order('2026-03-16')).toEqual(['J-9.1', 'J-8.1', 'PO-1']);
});

it('counts a line whose edges will not last as one that cannot be cut', () => {
  const short = blocker({ kind: 'life-short', hard: false });
  const ring = blocker({ kind: 'missing', role: 'go-ring', phase: 'accept' });
  const verdicts = [
    verdict({ lineId: 'J-1.1', verdict: 'cannot-make-now', blockers: [ring] }),
    verdict({ lineId: 'J-2.1', verdict: 'cannot-make-now', blockers: [short] }),
  ];
  expect(keys(decisions(shopRecord({ lines }), verdicts))).toEqual(['J-2.1', 'J-1.1']);
});

it('lists gauges and fluid that run out while the plan needs them, before those it does not need', () => {
  const facts = shopRecord({
    tools: [
      toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: '2026-03-13' }),
      toolFacts({ id: 'G-2', role: 'go-ring', dueOnDay: '2026-03-12' }),
      toolFacts({ id: 'W-1', role: 'torque-wrench', dueOnDay: '2026-03-03' }),
      toolFacts({ id: 'F-1', role: 'fluid', levelMl: 900, expiresOnDay: '2026-03-10' }),
      toolFacts({ id: 'F-2', role: 'fluid', levelMl: 0, expiresOnDay: '2026-03-10' }),
      toolFacts({ id: 'G-3', role: 'go-ring', dueOnDay: '2026-03-10', state: 'calibration' }),
      toolFacts({ id: 'D-1', role: 'die', dueOnDay: '2026-03-10' }),
    ],
  });
  const list = decisions(facts, [verdict()]);
  expect(keys(list)).toEqual(['F-1 2026-03-10', 'G-2 2026-03-12', 'W-1 2026-03-03', 'G-1 2026-03-13']);
  expect(list.map((one) => ('lineIds' in one ? one.lineIds : []))).toEqual([['J-1.1'], ['J-1.1'], [], []]);
});

it('counts a bottle from the day it was opened, and a gauge long overdue as needed by every line', () => {
  const facts = shopRecord({
    tools: [
      toolFacts({ id: 'F-1', role: 'fluid', levelMl: 900, openedOnDay: '2025-03-05' }),
      toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: '2026-02-01' }),
    ],
    lines: [lineFacts({ startOnDay: '2026-01-05', dueOnDay: '2026-01-09' })],
  });
  const list = decisions(facts, []);
  expect(keys(list)).toEqual(['G-1 2026-02-01', 'F-1 2026-03-05']);
  expect(list[0]).toMatchObject({ lineIds: ['J-1.1'] });
});

it('looks two weeks ahead at least, six at most, and no further than the plan', () => {
  const due = (day: string, dueOnDay: string) => {
    const tools = [toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: day })];
    return decisions(shopRecord({ tools, lines: [lineFacts({ dueOnDay })] }), []).length;
  };
  expect([due('2026-03-16', '2026-03-13'), due('2026-03-17', '2026-03-13')]).toEqual([1, 0]);
  expect([due('2026-04-13', '2026-09-01'), due('2026-04-14', '2026-09-01')]).toEqual([1, 0]);
});

it('does not list a gauge again that a listed line already names', () => {
  const facts = shopRecord({ tools: [toolFacts({ id: 'G-1', role: 'go-ring', dueOnDay: '2026-03-10' })] });
  const lapses = blocker({ kind: 'calibration-lapses', role: 'go-ring', phase: 'accept', toolIds: ['G-1'] });
  expect(keys(decisions(facts, [verdict({ verdict: 'cannot-make-now', blockers: [lapses] })]))).toEqual([
    'J-1.1',
  ]);
  expect(keys(decisions(facts, [verdict()]))).toEqual(['G-1 2026-03-10']);
});

it('is empty when nothing needs a decision', () => {
  expect(decisions(shopRecord(), [verdict()])).toEqual([]);
});
