import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionAscii, fractionText } from '@/lib/units/fraction-text';
import { parseFigure, parseInches } from '@/lib/units/parse-inches';
import { rational } from '@/lib/units/rational';

describe('parseInches reads what a shop writes', () => {
  // source: hand. Each is the fraction as written, reduced: 0.5625 = 5625/10000 = 9/16 (÷ 625).
  it.each([
    ['9/16', 9, 16],
    ['9⁄16', 9, 16],
    ['9∕16', 9, 16],
    ['18/32', 9, 16],
    [' 9 / 16 ', 9, 16],
    ['0.5625', 9, 16],
    ['.5625', 9, 16],
    ['1', 1, 1],
    ['1.', 1, 1],
    ['1.000', 1, 1],
    ['1 1/2', 3, 2],
    ['1-1/2', 3, 2],
    ['1 1⁄2', 3, 2],
    ['1½', 3, 2],
    ['⅜', 3, 8],
    ['27/16', 27, 16],
    ['9/16"', 9, 16],
    ['9/16 in', 9, 16],
    ['9/16in.', 9, 16],
    ['1 inch', 1, 1],
    ['3/4 IN', 3, 4],
  ])('%s', (text, num, den) => {
    expect(parseInches(text)).toEqual({ ok: true, value: { num, den } });
  });
});

describe('parseInches refuses nonsense with a sentence', () => {
  // source: hand. Which rule of the doc block each entry breaks.
  it.each([
    ['', 'figure-missing'],
    ['  ', 'figure-missing'],
    ['in', 'figure-missing'],
    ['0', 'figure-not-positive'],
    ['0/4', 'figure-not-positive'],
    ['9/0', 'figure-unreadable'],
    ['-9/16', 'figure-unreadable'],
    ['1 17/16', 'figure-unreadable'],
    ['9/16/2', 'figure-unreadable'],
    ['1-14', 'figure-unreadable'],
    ['9.5.1', 'figure-unreadable'],
    ['1e3', 'figure-unreadable'],
    ['.', 'figure-unreadable'],
    ['NaN', 'figure-unreadable'],
    ['9/16 mm', 'figure-unreadable'],
    ['0.1234567', 'figure-unreadable'],
    ['9999999', 'figure-unreadable'],
    ['0,5625', 'figure-comma'],
    ['９/16', 'figure-unreadable'],
  ])('%j', (text, code) => {
    const read = parseInches(text);
    expect(read).toMatchObject({ ok: false, refusal: { code } });
    if (!read.ok) expect(read.refusal.sentence).toMatch(/^[“A-Z].*\.$/);
  });

  // source: hand. Five thousand characters are no figure.
  it('refuses a text too long to be a figure', () => {
    const read = parseInches(`${' '.repeat(5000)}9/16`);
    expect(read).toMatchObject({ ok: false, refusal: { code: 'figure-unreadable' } });
  });

  // source: hand. The text as typed.
  it('quotes what was typed, unit and all', () => {
    const read = parseInches('nine in');
    expect(read.ok ? '' : read.refusal.sentence).toContain('“nine in”');
  });
});

// source: identity. What is written from a fraction reads back as the same fraction.
it('parse(format(r)) = r for true fractions and for plain ones', () => {
  const parts = fc.tuple(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 1_000_000 }));
  fc.assert(
    fc.property(parts, ([num, den]) => {
      const value = rational(num, den);
      expect(parseInches(fractionText(value))).toEqual({ ok: true, value });
      expect(parseInches(fractionAscii(value))).toEqual({ ok: true, value });
    }),
  );
});

// source: identity. A decimal of up to six places is the fraction over 10^6.
it('decimals are read exactly, not through a double', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99_999_999 }), (millionths) => {
      const text = `${Math.floor(millionths / 1e6)}.${String(millionths % 1e6).padStart(6, '0')}`;
      expect(parseFigure(text)).toEqual({ ok: true, value: rational(millionths, 1_000_000) });
    }),
  );
});

// source: identity. A refusal is returned, never thrown.
it('never throws, whatever is typed', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
      expect(typeof parseInches(text).ok).toBe('boolean');
    }),
  );
});
