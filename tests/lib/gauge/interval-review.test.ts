import { expect, it } from 'vitest';
import { addDays } from '@/lib/calendar/day';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { chanceAfterDays, driftSettings, reviewInterval } from '@/lib/gauge/interval-review';
import { CalibrationSchema } from '@/lib/shop/calibration';

const START = '2025-01-01';

function calibrated(at: number, error: number, asFound: 'in' | 'out' | 'not-taken' = 'in'): GaugeEvidence {
  const onDay = addDays(START, at);
  const calibration = CalibrationSchema.parse({
    ...{ onDay, result: 'pass', dueOnDay: addDays(onDay, 300), certificate: '', asFound, adjusted: false },
    features: [
      {
        ...{ feature: 'pitch diameter', unit: 'um', asFoundError: error, asLeftError: error },
        ...{ lowerLimit: -4, upperLimit: 4, expandedUncertainty: 0.8, coverageFactor: 2 },
      },
    ],
  });
  return {
    ...{ entryId: `c-${at}`, kind: 'calibration', onDay, atMs: at, asFound, asLeft: 'in' },
    ...{ qualifies: true, againstToolId: null, calibration, file: null },
  };
}

function checked(at: number, good: 'in' | 'out'): GaugeEvidence {
  return {
    ...{
      entryId: `k-${at}`,
      kind: 'interim',
      onDay: addDays(START, at),
      atMs: at,
      asFound: good,
      asLeft: good,
    },
    ...{ qualifies: true, againstToolId: 'SP-1', calibration: null, file: null },
  };
}

const review = (evidence: GaugeEvidence[], use: { onDay: string; ends: number }[] = []) =>
  reviewInterval({ evidence, intervalDays: 300, use, target: 0.95 });

it('shows every published way, and the drift, side by side', () => {
  const { advice } = review([calibrated(0, 0), calibrated(300, 0.1)]);
  expect(advice.map(({ method }) => method)).toEqual([
    ...['staircase', 'control-chart', 'in-use', 'in-service-check', 'statistics', 'drift'],
  ]);
});

// source: hand. Ends between two calibrations belong to the later one, its own day included.
it('counts the ends of each interval', () => {
  const use = [1, 300, 301, 600, 601].map((at) => ({ onDay: addDays(START, at), ends: at }));
  const { results } = review([calibrated(0, 0), calibrated(300, 0.4), calibrated(600, 3)], use);
  expect(results.map(({ days, ends, share }) => [days, ends, share])).toEqual([
    [null, null, 0],
    [300, 301, 0.1],
    [300, 901, 0.75],
  ]);
});

it('proposes the shortest that any way gives, in round days', () => {
  const drifting = review([calibrated(0, 0), calibrated(300, 1.2), calibrated(600, 2.5)]);
  const days = drifting.advice.flatMap((one) => one.days ?? []);
  expect(drifting.proposal?.days).toBeLessThanOrEqual(Math.min(...days));
  expect((drifting.proposal?.days ?? 1) % 5).toBe(0);
});

it('nothing longer is proposed on one result as found', () => {
  expect(review([calibrated(0, 0)]).proposal?.days ?? 0).toBeLessThanOrEqual(300);
  const steady = review([calibrated(0, 0), calibrated(300, 0.05), calibrated(600, 0)]);
  expect(steady.proposal).toMatchObject({ days: 370, method: 'staircase' });
});

it('found out is halved at least, and a failed check is heard', () => {
  expect(review([calibrated(0, 0), calibrated(300, 5, 'out')]).proposal?.days).toBeLessThanOrEqual(150);
  const failed = review([calibrated(0, 0), calibrated(300, 0), checked(340, 'in'), checked(390, 'out')]);
  expect(failed.advice.find(({ method }) => method === 'in-service-check')?.days).toBe(90);
  expect(failed.proposal?.days).toBeLessThanOrEqual(90);
});

it('with no interval in force the ways that change one stay silent', () => {
  const { advice } = reviewInterval({ evidence: [], intervalDays: null, use: [], target: 0.95 });
  expect(advice.map(({ method }) => method)).not.toContain('staircase');
  expect(advice.every(({ days, ends }) => days === null && ends === null)).toBe(true);
});

// source: identity. The chance to be in sinks as the days go on for a gauge that drifts; without figures there is none.
it('Q36: can we stretch it to 18 months? says how likely it is still in by then', () => {
  const drifting = review([calibrated(0, 0), calibrated(300, 1.2), calibrated(600, 2.5)]);
  const chances = [1, 200, 400, 548].map((days) => chanceAfterDays(drifting, days) ?? Number.NaN);
  expect([...chances].sort((a, b) => b - a)).toEqual(chances);
  expect(chances.at(-1)).toBeLessThan(0.5);
  expect(chanceAfterDays(review([]), 100)).toBeUndefined();
});

// source: common practice, no source. Half a tolerance in about two years, either way.
it('believes in no great drift before it has seen any', () => {
  expect(driftSettings({ halfWidth: 730 })).toEqual({ halfWidth: 730, slopeSd: 1 });
});

it('what the most cautious way keeps is kept, and not rounded down', () => {
  const evidence = [
    calibrated(0, 0),
    calibrated(300, 0.05),
    calibrated(600, 0),
    checked(640, 'in'),
    checked(690, 'in'),
  ];
  const at307 = reviewInterval({ evidence, intervalDays: 307, use: [], target: 0.95 });
  expect(Math.min(...at307.advice.flatMap(({ days }) => days ?? []))).toBe(307);
  expect(at307.proposal).toBeUndefined();
});
