import { describe, expect, it } from 'vitest';
import type { Finding } from '@/lib/reading/reading';
import { DEFAULT_READING_SETTINGS } from '@/lib/reading/reading-settings';
import { wornFraction } from '@/lib/reading/worn-fraction';

function read(finding: Finding, settings = DEFAULT_READING_SETTINGS) {
  const result = wornFraction(finding, settings);
  if (!result.ok) throw new Error(result.refusal.sentence);
  return result.value;
}

// source: hand. Land 0.12 of a limit of 0.3 is 0.4 of the life; error √((0.02/0.3)² + 0.12²) = 0.13728.
it('reads a wear land against its limit', () => {
  const { worn, sd } = read({ method: 'flank-land', landMm: 0.12 });
  expect(worn).toBeCloseTo(0.4, 12);
  expect(sd).toBeCloseTo(0.13728, 5);
  const cone = { ...DEFAULT_READING_SETTINGS, landLimitMm: 0.15 };
  expect(read({ method: 'flank-land', landMm: 0.12 }, cone).worn).toBeCloseTo(0.8, 12);
});

// source: hand. Limits 10.0 and 10.1, a new die cuts at 10.03: room 0.07. At 10.065 half of it is used. Wires 0.005/0.07.
describe('a pitch diameter', () => {
  const at = (pitchDiameterMm: number): Finding => ({
    method: 'pitch-diameter',
    pitchDiameterMm,
    minMm: 10,
    maxMm: 10.1,
    instrument: 'wires',
  });

  it('is read from where a new die cuts to the upper limit', () => {
    expect(read(at(10.065)).worn).toBeCloseTo(0.5, 9);
    expect(read(at(10.065)).sd).toBeCloseTo(Math.hypot(0.005 / 0.07, 0.12), 9);
  });

  it('below a new die or beyond the limit stays within the life', () => {
    expect(read(at(10.01)).worn).toBe(0);
    expect(read(at(10.2)).worn).toBe(1);
  });

  it('between limits that leave no room is refused', () => {
    const result = wornFraction({ ...at(10.05), maxMm: 10, minMm: 10 } as Finding);
    expect(result).toEqual({
      ok: false,
      refusal: { code: 'limits', sentence: 'The upper limit must lie above the lower one.', field: 'maxMm' },
    });
  });
});

describe('rings and grades', () => {
  it('read by the shop’s table', () => {
    expect(read({ method: 'grade', grade: 'marked' })).toEqual(DEFAULT_READING_SETTINGS.grade.marked);
    expect(read({ method: 'ring', go: 'refuses', notGoTurns: 0 })).toEqual(
      DEFAULT_READING_SETTINGS.go.refuses,
    );
  });

  it('take a NOT GO ring that runs on as a small thread, which no worn die cuts', () => {
    const small = read({ method: 'ring', go: 'free', notGoTurns: 2 });
    expect(small.worn).toBeLessThan(read({ method: 'ring', go: 'free', notGoTurns: 0 }).worn);
    expect(read({ method: 'ring', go: 'refuses', notGoTurns: 2 })).toEqual(
      DEFAULT_READING_SETTINGS.go.refuses,
    );
  });
});
