import { expect, it } from 'vitest';
import type { Prediction } from '@/lib/score/prediction';
import { scorecardOf } from '@/lib/score/scorecard';

const base: Prediction = {
  id: 'p',
  madeAtMs: 0,
  kind: 'tool-finishes',
  probability: 0.8,
  what: {},
  settled: null,
};
const cut = (outcome: boolean | null, more: Partial<Prediction> = {}): Prediction => ({
  ...base,
  settled: {
    outcome,
    reason: outcome === null ? 'lost' : 'cut-them',
    atMs: 1,
    lasted: { ends: 20, exact: true },
  },
  ...more,
});

// source: hand. Ours 0.8 and 0.8 on true and false: (0.04 + 0.64)/2 = 0.34. On the one case with a fixed count: 0.04 and 1.
it('sets ours beside the fixed count on the same cases', () => {
  const card = scorecardOf([
    cut(true, { fixedCount: 0, band: { low: 10, high: 30 } }),
    cut(false),
    cut(null, { band: undefined }),
    base,
  ]);
  expect(card).toMatchObject({ voided: 1, open: 1 });
  expect(card.ours?.brier).toBeCloseTo(0.34, 12);
  expect(card.oursOnSame?.brier).toBeCloseTo(0.04, 12);
  expect(card.fixedCount?.brier).toBe(1);
  expect(card.coverage).toMatchObject({ count: 1, share: 1 });
});

it('says nothing before anything is settled', () => {
  expect(scorecardOf([base])).toEqual({
    ...{
      ours: undefined,
      oursOnSame: undefined,
      fixedCount: undefined,
      voided: 0,
      open: 1,
      coverage: undefined,
    },
  });
});
