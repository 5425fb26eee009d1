import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardCell, plainCell } from '@/lib/import/cell-text';

describe('guardCell', () => {
  // source: published. OWASP, CSV injection: cells that begin with = + - @ tab, CR or LF, or the full-width forms of the signs; an apostrophe in front.
  it.each(['=1+1', '+1', '-LH', '@SUM(A1)', '\tx', '\rx', '\nx', '＝1', '＋1', '－1', '＠A', ' =1'])(
    'puts an apostrophe in front of %j',
    (cell) => {
      expect(guardCell(cell)).toBe(`'${cell}`);
    },
  );

  // source: published. OWASP, CSV injection: "take care of the field separator and quotes, as attackers could use this to start
  // a new cell and then have the dangerous character in the middle of the user input, but at the beginning of a cell".
  it('guards what a program that parts cells at semicolons would see at the beginning of one', () => {
    expect(guardCell('x;=1+1;y')).toBe("x;'=1+1;y");
    expect(guardCell('=1; @A;\t-2')).toBe("'=1; '@A;\t'-2");
    expect(guardCell("a; b;c; 'd'")).toBe("a; b;c; 'd'");
  });

  it('leaves other cells alone', () => {
    for (const cell of ['', 'D-56-14', '9/16 in', 'a=b', ' 1']) expect(guardCell(cell)).toBe(cell);
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
      .array(fc.tuple(fc.constantFrom('', '=', '+', '-', '@', "'", "''", ';', '; ', ";'"), printable))
      .map((pieces) => pieces.flat().join('').trim());
    fc.assert(
      fc.property(starting, (text) => {
        expect(plainCell(guardCell(text))).toBe(text);
      }),
    );
  });
});
