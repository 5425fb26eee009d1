import { expect, it } from 'vitest';
import {
  binJudgement,
  binSentence,
  coverageSentence,
  inTen,
  tooLittle,
  wrongSentence,
} from '@/app/_shared/words/score-words';
import { scoreSummary } from '@/lib/outlook/score-summary';

// source: hand. 0.78 is 7.8 in 10; a whole tenth stands without a decimal.
it('says a share in tenths', () => {
  expect([inTen(0.78), inTen(0.8), inTen(0.0751)]).toEqual(['7.8 in 10', '8 in 10', '0.8 in 10']);
  expect(binSentence({ predicted: 0.8, observed: 0.78 })).toBe('When it said 8 in 10, 7.8 in 10 finished.');
});

// source: hand. Within the interval it is as said; below it too hopeful was said, above it too cautious.
it('judges a group by its interval', () => {
  const judged = (predicted: number) => binJudgement({ predicted, low: 0.55, high: 0.72 });
  expect([judged(0.6), judged(0.8), judged(0.5)]).toEqual(['as said', 'too hopeful', 'too cautious']);
});

// source: hand. 30 cases are the least to judge by.
it('says who was wrong how often, or that it is too early to say', () => {
  const card = scoreSummary([]).card;
  expect(wrongSentence({ card, wrong: { cases: 650, ours: 105, fixedCount: 117 } })).toBe(
    'Of 650 cases it called 105 wrong; changing at the fixed count would have called 117 wrong.',
  );
  expect(wrongSentence({ card, wrong: { cases: 29, ours: 1, fixedCount: 2 } })).toMatch(
    /^Nothing has been settled yet/,
  );
  expect(tooLittle(0)).toBe(
    'Nothing has been settled yet: too little to judge it by. From about 30 on it says something.',
  );
  expect(tooLittle(1)).toMatch(/^Only 1 case settled: too little/);
});

// source: hand. Bands claim 80 %: an interval around it bears that out, one above says wider, one below narrower.
it('judges the bands by what they claim', () => {
  const said = (share: number, low: number, high: number, count = 600) =>
    coverageSentence({ share, low, high, count, short: 0, beyond: 0 });
  expect(said(0.79, 0.76, 0.82)).toBe(
    '79\u202f% of 600 bands held what happened; 80\u202f% is claimed: as claimed',
  );
  expect(said(0.85, 0.82, 0.88)).toMatch(/wider than need be$/);
  expect(said(0.7, 0.66, 0.74)).toMatch(/too narrow$/);
  expect(said(0.7, 0.5, 0.85, 12)).toBe('too few bands have been settled');
  expect(coverageSentence(undefined)).toBe('too few bands have been settled');
});
