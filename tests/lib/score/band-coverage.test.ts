import { expect, it } from 'vitest';
import { bandCoverage } from '@/lib/score/band-coverage';

const band = { low: 10, high: 40 };

// source: hand. One within, one short, one beyond though still cutting; one still within its band is left out.
it('counts the bands that held what came', () => {
  const coverage = bandCoverage([
    { band, lasted: { ends: 25, exact: true } },
    { band, lasted: { ends: 9, exact: true } },
    { band, lasted: { ends: 41, exact: false } },
    { band, lasted: { ends: 30, exact: false } },
  ]);
  expect(coverage).toMatchObject({ count: 3, share: 1 / 3, short: 1 / 3, beyond: 1 / 3 });
  expect(bandCoverage([{ band, lasted: { ends: 30, exact: false } }])).toBeUndefined();
});
