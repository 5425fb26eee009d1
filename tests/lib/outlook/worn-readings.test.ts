import { expect, it } from 'vitest';
import { exposureParts, wornReadings, wornShare } from '@/lib/outlook/worn-readings';
import { use } from '../../support/edge-facts';

// source: hand. 40 threads of 10.5 turns are 420 turns.
it('exposureParts counts in turns, by condition', () => {
  const parts = exposureParts([use(40), use(4, { dry: true, materialId: '2507' })]);
  expect(parts).toEqual([
    { materialId: '316-cw', dry: false, rework: false, base: 420 },
    { materialId: '2507', dry: true, rework: false, base: 42 },
  ]);
});

// source: hand. An edge at its limit has used up its whole life, a fresh one hardly any; each with what it had cut then.
it('a reading says how much of a life is used up, and at what exposure', () => {
  const grades = ['fresh', 'light', 'marked', 'at-limit'] as const;
  const readings = wornReadings(
    grades.map((grade, at) => ({ finding: { method: 'grade', grade }, use: [use(10 * at)] })),
  );
  const worn = readings.map((reading) => reading.worn);
  expect(worn).toEqual([...worn].sort((a, b) => a - b));
  expect(worn.at(-1)).toBe(1);
  expect(worn[0]).toBeLessThan(0.25);
  expect(readings.map(({ exposure }) => exposure[0]?.base)).toEqual([0, 105, 210, 315]);
  for (const { sd } of readings) expect(sd).toBeGreaterThan(0);
});

// source: hand. Limits that coincide leave no room for wear.
it('a reading against limits without room says nothing', () => {
  const limits = { pitchDiameterMm: 9, minMm: 9, maxMm: 9, instrument: 'wires' } as const;
  expect(wornShare({ method: 'pitch-diameter', ...limits })).toBeUndefined();
  expect(wornReadings([{ finding: { method: 'pitch-diameter', ...limits }, use: [] }])).toEqual([]);
});
