import { expect, it } from 'vitest';
import { scoreSummary } from '@/lib/outlook/score-summary';
import type { Prediction, Settlement } from '@/lib/score/prediction';

let count = 0;
function said(probability: number, outcome: boolean | null, change: Partial<Prediction> = {}): Prediction {
  count += 1;
  const reason = outcome === null ? 'lost' : outcome ? 'cut-them' : 'wore-out-before';
  const settled: Settlement = { outcome, reason, atMs: 0 };
  return { id: `${count}`, madeAtMs: 0, kind: 'tool-finishes', probability, what: {}, settled, ...change };
}

// source: hand. Ours: 0.9 true, 0.2 false and 0.6 true are right, 0.7 false is wrong. The count: yes, yes, yes, no: wrong on
// the second, the third and the fourth. Void and open cases and one without a count are no cases.
it('counts who was wrong on the same cases', () => {
  const { wrong, card } = scoreSummary([
    said(0.9, true, { fixedCount: 1 }),
    said(0.2, false, { fixedCount: 1 }),
    said(0.7, false, { fixedCount: 1 }),
    said(0.6, true, { fixedCount: 0 }),
    said(0.4, null, { fixedCount: 0 }),
    said(0.4, true),
    said(0.4, null, { fixedCount: 0, settled: null }),
  ]);
  expect(wrong).toEqual({ cases: 4, ours: 1, fixedCount: 3 });
  expect([card.ours?.count, card.oursOnSame?.count, card.voided, card.open]).toEqual([5, 4, 1, 1]);
});

// source: hand. Lives of 10 and 30 within and beyond 5 to 20; one only known to be longer than 25 is left out.
it('judges bands on lives that are known in full', () => {
  const band = { low: 5, high: 20 };
  const lasting = (ends: number, exact: boolean) =>
    said(0.5, true, {
      band,
      settled: { outcome: true, reason: 'cut-them', atMs: 0, lasted: { ends, exact } },
    });
  const { coverage } = scoreSummary([lasting(10, true), lasting(30, true), lasting(25, false)]);
  expect(coverage).toMatchObject({ count: 2, share: 0.5, beyond: 0.5 });
});

// source: hand. Nothing said, nothing scored.
it('of nothing is nothing', () => {
  const summary = scoreSummary([]);
  expect(summary.card.ours).toBeUndefined();
  expect(summary.coverage).toBeUndefined();
  expect(summary.wrong.cases).toBe(0);
});
