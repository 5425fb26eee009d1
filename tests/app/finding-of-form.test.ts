import { expect, it } from 'vitest';
import { findingOfForm } from '@/app/tools/_parts/finding-of-form';
import { FindingSchema } from '@/lib/reading/reading';

function read(fields: Readonly<Record<string, string>>) {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  return findingOfForm(form);
}

function found(fields: Readonly<Record<string, string>>) {
  const result = read(fields);
  if (!result.ok) throw new Error(result.refusal.sentence);
  return FindingSchema.parse(result.value);
}

// source: hand. What is ticked is what is found.
it('reads a grade and a ring', () => {
  expect(found({ method: 'grade', grade: 'marked' })).toEqual({ method: 'grade', grade: 'marked' });
  expect(found({ method: 'ring', go: 'free', notGoTurns: '2' })).toMatchObject({ go: 'free', notGoTurns: 2 });
  expect(found({ method: 'ring', go: 'tight', notGoTurns: '' })).toMatchObject({ notGoTurns: null });
});

// source: hand. An inch is 25.4 mm; no land at all is a reading too.
it('reads lengths in the unit of their field', () => {
  expect(found({ method: 'flank-land', land: '0.004', landUnit: 'in' })).toEqual({
    method: 'flank-land',
    landMm: expect.closeTo(0.1016, 9),
  });
  expect(found({ method: 'flank-land', land: '0.12', landUnit: 'mm' })).toMatchObject({ landMm: 0.12 });
  expect(found({ method: 'flank-land', land: '0', landUnit: 'in' })).toMatchObject({ landMm: 0 });
  const limits = { pitchDiameter: '0.355', min: '0.35', max: '0.36', pitchUnit: 'in', instrument: 'wires' };
  expect(found({ method: 'pitch-diameter', ...limits })).toMatchObject({
    pitchDiameterMm: expect.closeTo(9.017, 9),
    minMm: expect.closeTo(8.89, 9),
    maxMm: expect.closeTo(9.144, 9),
  });
});

// source: hand. The refusal names the field, so that the form can point at it.
it('refuses a length that cannot be read, and names its field', () => {
  const land = read({ method: 'flank-land', land: 'wide', landUnit: 'mm' });
  expect(land.ok || land.refusal.field).toBe('land');
  const limits = { pitchDiameter: '9', min: '8.9', max: '', pitchUnit: 'mm', instrument: 'wires' };
  const pitch = read({ method: 'pitch-diameter', ...limits });
  expect(pitch.ok || pitch.refusal.field).toBe('max');
});
