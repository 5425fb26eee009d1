import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LengthUnit, parseLength } from '@/lib/units/parse-length';

describe('parseLength reads a length and keeps what was typed', () => {
  // source: hand. 7/16 in = 7 × 25.4 / 16 = 11.1125 mm; 0.4375 = 7/16; 1 1/2 in = 38.1 mm.
  it.each<[string | number, LengthUnit | undefined, number, LengthUnit]>([
    ['9.5 mm', undefined, 9.5, 'mm'],
    ['9.5mm', undefined, 9.5, 'mm'],
    ['9.5 MM', undefined, 9.5, 'mm'],
    ['7/16 in', undefined, 11.1125, 'in'],
    ['7⁄16″', undefined, 11.1125, 'in'],
    ['0.4375"', undefined, 11.1125, 'in'],
    ['.4375 inches', undefined, 11.1125, 'in'],
    ['1 1/2 in.', undefined, 38.1, 'in'],
    ['1½ in', undefined, 38.1, 'in'],
    ['9.5', 'mm', 9.5, 'mm'],
    ['7/16', 'in', 11.1125, 'in'],
    [9.5, 'mm', 9.5, 'mm'],
    ['9.5 mm', 'mm', 9.5, 'mm'],
  ])('%s with field %s', (typed, field, lengthMm, unit) => {
    expect(parseLength(typed, field)).toEqual({ ok: true, value: { lengthMm, typed: String(typed), unit } });
  });
});

describe('parseLength refuses with a sentence', () => {
  // source: hand. Which rule of the doc block each entry breaks.
  it.each<[string | number, LengthUnit | undefined, string]>([
    ['9.5', undefined, 'length-unit-missing'],
    [9.5, undefined, 'length-unit-missing'],
    ['', undefined, 'figure-missing'],
    ['', 'mm', 'figure-missing'],
    ['9.5 cm', undefined, 'length-unit-unknown'],
    ['9.5 m', 'mm', 'length-unit-unknown'],
    ['9.5 mm', 'in', 'length-unit-conflict'],
    ['7/16 mm', undefined, 'length-fraction-mm'],
    ['½', 'mm', 'length-fraction-mm'],
    ['9,5 mm', undefined, 'figure-comma'],
    ['-9.5 mm', undefined, 'figure-unreadable'],
    ['0 mm', undefined, 'figure-not-positive'],
    ['1e3 mm', undefined, 'figure-unreadable'],
    [Number.NaN, 'mm', 'figure-unreadable'],
    [Number.POSITIVE_INFINITY, 'mm', 'figure-unreadable'],
    ['10001 mm', undefined, 'length-too-long'],
    ['400 in', undefined, 'length-too-long'],
    ['mm', 'mm', 'figure-unreadable'],
  ])('%j with field %s', (typed, field, code) => {
    const read = parseLength(typed, field);
    expect(read).toMatchObject({ ok: false, refusal: { code } });
    if (!read.ok) expect(read.refusal.sentence).toMatch(/^[“A-Z].*\.$/);
  });
});

// source: hand. Nine thousand characters are no length.
it('parseLength refuses a text too long to be a length', () => {
  const read = parseLength(`9.5${' '.repeat(9000)}x mm`, 'mm');
  expect(read).toMatchObject({ ok: false, refusal: { code: 'figure-unreadable' } });
});

// source: identity. 1 in = 25.4 mm: the same length typed either way is the same within two roundings.
it('the same length in inch and in millimetre reads the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 3_000_000 }), (tenThousandths) => {
      const inches = parseLength(`${(tenThousandths / 10_000).toFixed(4)} in`);
      const hundredThousandths = tenThousandths * 254;
      const figureMm = `${Math.floor(hundredThousandths / 100_000)}.${String(hundredThousandths % 100_000).padStart(5, '0')}`;
      const metric = parseLength(`${figureMm} mm`);
      expect(inches.ok && inches.value.lengthMm).toBe(metric.ok && metric.value.lengthMm);
    }),
  );
});

// source: identity. A refusal is returned, never thrown.
it('never throws, whatever is typed', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
      expect(typeof parseLength(text, 'in').ok).toBe('boolean');
    }),
  );
});
