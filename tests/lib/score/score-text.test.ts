import { describe, expect, it } from 'vitest';
import type { Prediction } from '@/lib/score/prediction';
import { scoreText } from '@/lib/score/score-text';
import { scorecardOf } from '@/lib/score/scorecard';

const prediction = (outcome: boolean, fixedCount?: 0 | 1): Prediction => ({
  ...{ id: 'p', madeAtMs: 0, kind: 'tool-finishes', probability: 0.8, what: {}, fixedCount },
  settled: { outcome, reason: 'cut-them', atMs: 1, lasted: { ends: 20, exact: true } },
});

describe('a scorecard in plain lines', () => {
  // source: hand. Three of four came true at 0.8: Brier (3·0.04 + 0.64)/4 = 0.19, against 0.75·0.25 = 0.1875: skill −1 %.
  const text = scoreText(
    scorecardOf([prediction(true, 1), prediction(true, 1), prediction(true, 0), prediction(false, 0)]),
    { count: 4, share: 0.75, low: 0.3, high: 0.95, short: 0.25, beyond: 0 },
  ).join('\n');

  it('sets what came true beside what was said', () => {
    expect(text).toContain('4 predictions settled, 0 void');
    expect(text).toMatch(/80 % +75 % +30 % to 95 % +4/);
    expect(text).toContain('Ours: Brier 0.1900, skill over the base rate -1 %, 4 cases');
    expect(text).toContain('Fixed count, the same cases: Brier 0.2500');
    expect(text).toContain('75 % held');
  });

  it('says so when there is nothing to compare, or nothing at all', () => {
    expect(scoreText(scorecardOf([prediction(true)])).join('\n')).toContain('no fixed count');
    expect(scoreText(scorecardOf([]))).toEqual(['Nothing has been settled yet.']);
  });
});
