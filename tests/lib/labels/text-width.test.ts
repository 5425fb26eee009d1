import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fittingFontMm, textWidthEm } from '@/lib/labels/text-width';

// source: identity. More letters are wider; what fits at one size fits at every smaller one.
it('grows with the text, and a line set to fit fits', () => {
  fc.assert(
    fc.property(
      fc.string({ minLength: 1, maxLength: 40 }),
      fc.double({ min: 5, max: 60, noNaN: true }),
      (line, widthMm) => {
        expect(textWidthEm(`${line}x`)).toBeGreaterThan(textWidthEm(line));
        const fontMm = fittingFontMm(line, { widthMm, mostMm: 4 });
        if (fontMm === undefined) expect(textWidthEm(line) * 1.3).toBeGreaterThan(widthMm);
        else expect(fontMm * textWidthEm(line)).toBeLessThanOrEqual(widthMm + 1e-9);
      },
    ),
  );
});

// source: hand. A true fraction is narrower than its figures set in full; 35 letters in 14 mm would be under 1.3 mm.
it('knows fractions, and leaves out what nobody could read', () => {
  expect(textWidthEm('9⁄16')).toBeLessThan(textWidthEm('9/16'));
  expect(fittingFontMm('3/8-24 UNF-LH die, adjustable split', { widthMm: 14, mostMm: 2 })).toBeUndefined();
  expect(fittingFontMm('threading die', { widthMm: 30, mostMm: 2 })).toBe(2);
});
