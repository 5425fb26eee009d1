import { expect, it } from 'vitest';
import { driftRates, featureHistory } from '@/lib/gauge/drift-points';
import { type Calibration, CalibrationSchema } from '@/lib/shop/calibration';

const calibration = (
  onDay: string,
  found: number | null,
  left: number | null,
  over: object = {},
): Calibration =>
  CalibrationSchema.parse({
    ...{ onDay, result: 'pass', dueOnDay: '2027-12-31', certificate: '', adjusted: false },
    features: [
      {
        ...{ feature: 'Pitch diameter', unit: 'um', asFoundError: found, asLeftError: left },
        ...{ lowerLimit: -4, upperLimit: 4, expandedUncertainty: 1, coverageFactor: 2, ...over },
      },
    ],
  });

// source: hand. Found 0, 1, 2 a hundred days apart and never adjusted: one segment, a hundredth a day.
it('one feature through its certificates', () => {
  const days = ['2026-01-01', '2026-04-11', '2026-07-20'];
  const history = featureHistory(days.map((onDay, i) => calibration(onDay, i, i)));
  expect(history).toMatchObject({ feature: 'Pitch diameter', unit: 'um', lower: -4, upper: 4, halfWidth: 4 });
  expect(history?.points.map(({ at, error, segment }) => [at, error, segment])).toEqual([
    [0, 0, 1],
    [100, 1, 1],
    [200, 2, 1],
  ]);
  expect(history?.points[0]?.standardUncertainty).toBe(0.5);
  expect(driftRates(history?.points ?? [])).toEqual([0.01, 0.01]);
});

// source: hand. Found 3, adjusted to 0, found 1 later: the level starts anew, and no change is counted across the adjustment.
it('an adjustment begins a new segment', () => {
  const history = featureHistory([
    calibration('2026-01-01', null, 2),
    calibration('2026-04-11', 3, 0),
    calibration('2026-07-20', 1, 1),
  ]);
  expect(history?.points.map(({ at, error, segment }) => [at, error, segment])).toEqual([
    [0, 2, 1],
    [100, 3, 1],
    [100, 0, 2],
    [200, 1, 2],
  ]);
  expect(driftRates(history?.points ?? [])).toEqual([0.01, 0.01]);
});

// source: published. 1 in = 25.4 mm: a laboratory that writes inches is read with one that writes micrometres.
it('laboratories may write in different units, and a name in other letters is the same feature', () => {
  const inch = {
    unit: 'in',
    feature: 'pitch diameter',
    lowerLimit: -0.0001,
    upperLimit: 0.0001,
    expandedUncertainty: 0.00002,
  };
  const history = featureHistory([
    calibration('2026-01-01', 0.0001, 0.0001, inch),
    calibration('2026-04-11', 3, 3),
  ]);
  expect(history?.points.map(({ error }) => Number(error.toFixed(9)))).toEqual([2.54, 3]);
});

it('without an error and its limits there is no history', () => {
  const bare: Calibration = { onDay: '2026-01-01', result: 'pass', dueOnDay: '2027-01-01', certificate: '' };
  expect(featureHistory([])).toBeUndefined();
  expect(featureHistory([bare])).toBeUndefined();
  expect(
    featureHistory([calibration('2026-01-01', 1, 1, { lowerLimit: null, upperLimit: null })]),
  ).toBeUndefined();
  expect(featureHistory([calibration('2026-01-01', null, null)])).toBeUndefined();
});

// source: hand. No U stated: a fifth of the half-width of 4 is taken for U, so u = 0.4.
it('an uncertainty that is not stated is taken wide', () => {
  const history = featureHistory([calibration('2026-01-01', 1, 1, { expandedUncertainty: null })]);
  expect(history?.points[0]?.standardUncertainty).toBeCloseTo(0.4, 12);
});
