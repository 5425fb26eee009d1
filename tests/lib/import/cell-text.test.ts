import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardCell, plainCell } from '@/lib/import/cell-text';

describe('guardCell', () => {
  // source: published. OWASP, CSV injection: cells that begin with = + - @ tab, CR or LF, or the full-width forms of the signs; an apostrophe in front.
  it.each(['=1+1', '+1', '-LH', '@SUM(A1)', '\tx', '\rx', '\nx', '＝1', '＋1', '－1', '＠A'])(
    'puts an apostrophe in front of %j',
    (cell) => {
      expect(guardCell(cell)).toBe(`'${cell}`);
    },
  );

  it('leaves other cells alone', () => {
    for (const cell of ['', 'D-56-14', '9/16 in', 'a=b', ' =1']) expect(guardCell(cell)).toBe(cell);
  });
});

describe('plainCell', () => {
  it('strips spaces, one apostrophe and line breaks', () => {
    expect(plainCell("  '=1+1 ")).toBe('=1+1');
    expect(plainCell('a\r\nb\tc')).toBe('a b c');
    expect(plainCell("''quoted'")).toBe("'quoted'");
    expect(plainCell('\u00a0 x\u00a0')).toBe('x');
  });

  it('gives back every trimmed printable text that was guarded', () => {
    const printable = fc.string({ unit: 'grapheme' }).map((text) => text.replace(/\p{Cc}/gu, '').trim());
    const starting = fc
      .tuple(fc.constantFrom('', '=', '+', '-', '@', "'", "''"), printable)
      .map(([a, b]) => (a + b).trim());
    fc.assert(
      fc.property(starting, (text) => {
        expect(plainCell(guardCell(text))).toBe(text);
      }),
    );
  });
});
