import { expect, it } from 'vitest';
import { readTypedLand, readTypedPitch, type TypedPitch } from '@/lib/reading/typed-finding';

/** 3/8-24: basic pitch diameter 0.3479 in, 2A limits 0.3430 to 0.3468 in. */
const THREAD = { majorMm: 9.525, tpi: 24 };
const LIMITS = { min: { text: '0.3430', unit: 'in' }, max: { text: '0.3468', unit: 'in' } } as const;
const WIRES: TypedPitch = {
  ...LIMITS,
  instrument: 'wires',
  overWires: { text: '0.38108', unit: 'in' },
  wire: { text: '0.024056', unit: 'in' },
};

function refusal(typed: TypedPitch) {
  const read = readTypedPitch(typed, THREAD);
  return read.ok ? undefined : read.refusal;
}

// source: formula. The worked table of dimensions over wires: 3/8-24 over 0.024056 in wires at E = 0.3450 in is 0.38108 in.
it('finds the pitch diameter from a measurement over wires', () => {
  const read = readTypedPitch(WIRES, THREAD);
  if (!read.ok) throw new Error(read.refusal.sentence);
  expect(read.value.pitchDiameterMm / 25.4).toBeCloseTo(0.345, 4);
  expect(read.value.overWires?.wireMm).toBeCloseTo(0.611, 3);
  const inMm = readTypedPitch({ ...WIRES, overWires: { text: '9.679432', unit: 'mm' } }, THREAD);
  expect(inMm.ok && inMm.value.pitchDiameterMm).toBeCloseTo(read.value.pitchDiameterMm, 6);
});

// source: hand. Each figure in the wrong unit is asked about, in its own field, with what was meant; 0.345 × 25.4 = 8.763.
it.each([
  ['overWires', { overWires: { text: '9.68', unit: 'in' } }, '9.68 in is 246 mm: did you mean 9.68 mm?'],
  ['wire', { wire: { text: '0.024', unit: 'mm' } }, '0.024 mm is 0.00094 in: did you mean 0.024 in?'],
  ['max', { max: { text: '8.81', unit: 'in' } }, '8.81 in is 224 mm: did you mean 8.81 mm?'],
  ['min', { min: { text: '0.343', unit: 'mm' } }, '0.343 mm is 0.014 in: did you mean 0.343 in?'],
] as const)('a slip in %s is caught', (field, change, sentence) => {
  expect(refusal({ ...WIRES, ...change })).toMatchObject({ code: 'unit-slip', field, sentence });
});

// source: hand. A pitch diameter read directly goes the same way.
it('reads a pitch diameter', () => {
  const direct = { ...LIMITS, instrument: 'micrometer' as const };
  const read = readTypedPitch({ ...direct, pitchDiameter: { text: '8.763', unit: 'mm' } }, THREAD);
  expect(read.ok && read.value).toMatchObject({ pitchDiameterMm: 8.763, instrument: 'micrometer' });
  expect(refusal({ ...direct, pitchDiameter: { text: '0.345', unit: 'mm' } })?.meant).toEqual({
    figure: '0.345',
    unit: 'in',
  });
  expect(refusal(direct)?.field).toBe('pitchDiameter');
});

// source: hand. Another thread's figures, wires that do not seat, limits the wrong way round, a thread nobody knows.
it('refuses what cannot be of this thread', () => {
  expect(refusal({ ...WIRES, overWires: { text: '0.5731', unit: 'in' } })).toMatchObject({
    code: 'far',
    field: 'overWires',
  });
  expect(refusal({ ...WIRES, wire: { text: '0.0625', unit: 'in' } })).toMatchObject({
    code: 'wires',
    field: 'wire',
  });
  expect(refusal({ ...WIRES, min: LIMITS.max, max: LIMITS.min })).toMatchObject({
    code: 'limits',
    field: 'max',
  });
  expect(readTypedPitch(WIRES).ok).toBe(false);
});

// source: hand. 0.004 in is 0.1016 mm; no land at all is a reading; 0.15 in = 3.81 mm is no land of a blade in service.
it('reads a wear land', () => {
  const land = (text: string, unit: 'in' | 'mm') => readTypedLand({ text, unit });
  expect(land('0.004', 'in')).toMatchObject({ ok: true, value: expect.closeTo(0.1016, 9) });
  for (const nought of ['0', '0.0', '0.00']) expect(land(nought, 'in')).toEqual({ ok: true, value: 0 });
  expect(land('0.15', 'in')).toMatchObject({
    refusal: { code: 'unit-slip', meant: { figure: '0.15', unit: 'mm' } },
  });
  expect(land('0.006', 'mm')).toMatchObject({
    refusal: { code: 'unit-slip', meant: { figure: '0.006', unit: 'in' } },
  });
  expect(land('', 'mm').ok).toBe(false);
});
