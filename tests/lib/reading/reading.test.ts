import { describe, expect, it } from 'vitest';
import { FindingSchema } from '@/lib/reading/reading';

describe('a finding', () => {
  it.each([
    { method: 'flank-land', landMm: 0.12 },
    { method: 'pitch-diameter', pitchDiameterMm: 13.61, minMm: 13.55, maxMm: 13.65, instrument: 'wires' },
    { method: 'ring', go: 'tight', notGoTurns: null },
    { method: 'grade', grade: 'light' },
  ])('of method $method is taken as it is', (finding) => {
    expect(FindingSchema.parse(finding)).toEqual(finding);
  });

  it('of a ring alone leaves the NOT GO ring untried', () => {
    expect(FindingSchema.parse({ method: 'ring', go: 'free' })).toEqual({
      method: 'ring',
      go: 'free',
      notGoTurns: null,
    });
  });

  it.each([
    [{ method: 'flank-land', landMm: -0.1 }, 'The wear land is a length from 0 to 5 mm.'],
    [{ method: 'flank-land', landMm: 30 }, 'The wear land is a length from 0 to 5 mm.'],
  ])('out of bounds is refused in a sentence', (finding, sentence) => {
    expect(FindingSchema.safeParse(finding).error?.issues[0]?.message).toBe(sentence);
  });

  it('of no known method or grade is refused', () => {
    expect(FindingSchema.safeParse({ method: 'sound' }).success).toBe(false);
    expect(FindingSchema.safeParse({ method: 'grade', grade: 'shiny' }).success).toBe(false);
  });
});
