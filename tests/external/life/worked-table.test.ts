import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { endsLeft, likelyEnds, safeEnds } from '@/lib/ensemble/forecast';
import { normal } from '@/lib/life/priors';
import { normalCdf } from '@/lib/numeric/normal';
import { cut, edge } from '@/tests/support/edge-histories';
import { DIE_PRIORS, fitted, inHand } from '@/tests/support/small-shop';

// source: formula. A shop's working table: normal life of mean 1300 turns and spread 0.3 of it, 10.5 turns an end;
// P(finish) = S(used + need)/S(used); safe ends at 0.9, likely ends at 0.5. Common practice, no source for the 0.3.
const TABLE = [
  { used: 0, safe: 76, likely: 123 },
  { used: 300, safe: 48, likely: 95 },
  { used: 600, safe: 25, likely: 68 },
  { used: 900, safe: 11, likely: 45 },
  { used: 1100, safe: 7, likely: 33 },
  { used: 1300, safe: 4, likely: 25 },
  { used: 1500, safe: 3, likely: 19 },
];
const beyond = (turns: number): number => normalCdf((1300 - turns) / 390);

it.each(TABLE)('the table follows from its own formula at $used turns', ({ used, safe, likely }) => {
  for (const [ends, confidence] of [
    [safe, 0.9],
    [likely, 0.5],
  ] as const) {
    expect(beyond(used + 10.5 * ends) / beyond(used)).toBeGreaterThanOrEqual(confidence);
    // The table rounds the likely ends to the nearest, so two more, not one.
    expect(beyond(used + 10.5 * (ends + 2)) / beyond(used)).toBeLessThan(confidence);
  }
});

/**
 * Our model told as much as the table assumes: Weibull with the same spread (shape 3.7 has a coefficient of variation of
 * 0.30) and median 1300, known almost surely, no incidents to speak of. The two lives are not the same distribution, most of
 * all for old tools, where the normal's hazard keeps rising faster and its left tail leaves the first ends a little safer.
 * So decisions are compared, not digits: within 5 ends or a quarter.
 */
describe('our model, told the same, leads to similar decisions', () => {
  const priors = {
    ...DIE_PRIORS,
    logShape: normal(Math.log(3.7), 0.02),
    logMedian: normal(Math.log(1300), 0.02),
    sizeExponent: normal(0, 0),
    part: normal(0, 0),
    incident: { shape: 1, livesPerIncident: 1e6 },
  };
  it.each(TABLE)('at $used turns: $safe safe, $likely likely', ({ used, safe, likely }) => {
    const tool = inHand(edge('D', { before: [cut(used)] }));
    const left = endsLeft(
      buildEnsemble({ kinds: { die: fitted([], { priors }) }, tools: [tool], parts: [] }),
      'D',
      {
        exposurePerEnd: 10.5,
        materialId: 'ref',
        dry: false,
        rework: false,
      },
    );
    if (left === undefined) throw new Error('the tool is known');
    expect(Math.abs(safeEnds(left) - safe)).toBeLessThanOrEqual(Math.max(5, safe / 4));
    expect(Math.abs(likelyEnds(left) - likely)).toBeLessThanOrEqual(Math.max(5, likely / 4));
    // A rule of "a tenth of the life less what is used" would say 0 from 900 turns on; a worn die that still cuts has ends left.
    expect(safeEnds(left)).toBeGreaterThan(0);
  });
});

// source: formula. A shop that learns: prior 2.5 (log spread 0.47), the first 2507 die lasts 306 turns where 1200 are typical
// (3.9 times the wear), blended 3.4. The table's normal observation error of the log is ours only in spirit: a single life of
// shape 3.7 has a spread of 0.35 in the log, so between 2.9 and 3.8.
it('learns a material factor from one die about as fast', () => {
  const priors = {
    ...DIE_PRIORS,
    logShape: normal(Math.log(3.7), 0.02),
    logMedian: normal(Math.log(1200), 0.02),
    sizeExponent: normal(0, 0),
    part: normal(0, 0),
    materials: [{ materialId: '2507', logFactor: normal(Math.log(2.5), 0.47) }],
  };
  const worn = edge('D', {
    before: [cut(33 * 9, { materialId: '2507' })],
    during: [cut(9, { materialId: '2507' })],
    end: 'worn',
  });
  const factor = Math.exp(fitted([worn], { priors }).mode['material:2507'] ?? 0);
  expect(factor).toBeGreaterThan(2.9);
  expect(factor).toBeLessThan(3.8);
});
