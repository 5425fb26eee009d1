import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '@/app/_import/read-csv';

const utf8 = new TextEncoder();

function grid(text: string): unknown {
  const table = readCsv(utf8.encode(text));
  return table.ok ? [table.value.header, ...table.value.rows] : table.refusal.sentence;
}

describe('readCsv', () => {
  it.each([
    ['CRLF', 'a,b\r\n1,2\r\n'],
    ['LF without a last line end', 'a,b\n1,2'],
    ['CR', 'a,b\r1,2\r'],
    ['a byte order mark', '\uFEFFa,b\n1,2\n'],
    ['semicolons', 'a;b\n1;2\n'],
    ['tabs', 'a\tb\n1\t2\n'],
    ['quotes', '"a","b"\r\n"1","2"\r\n'],
    ['blank rows at the end', 'a,b\n1,2\n,\n\n ,\n'],
  ])('reads a file with %s', (_name, text) => {
    expect(grid(text)).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });

  it('keeps commas, quotes, line breaks and inch marks inside cells, and blank rows in their place', () => {
    expect(grid('a,b\n"x, ""y""\nz",9/16"\n\n1,2')).toEqual([
      ['a', 'b'],
      ['x, "y"\nz', '9/16"'],
      [''],
      ['1', '2'],
    ]);
  });

  it('says in which row a quotation mark is left open', () => {
    expect(grid('a,b\n1,2\n"3,4\n5,6')).toContain('opened in row 3 and never closed');
  });

  it('refuses hostile shapes in a sentence', () => {
    expect(grid(`a,b\n1,${'x'.repeat(1_000_000)}`)).toContain('Row 2 is longer than 100000 characters');
    expect(grid(`${'c,'.repeat(9_999)}c\n1`)).toContain('more than 200 columns');
    expect(grid(`a\n${'1\n'.repeat(200_001)}`)).toContain('more than 200000 rows');
    expect(grid('')).toContain('empty');
    expect(grid('\n\na,b')).toContain('first row is empty');
    expect(grid('a,b\r\n')).toContain('no rows below');
  });

  it('does not fill the memory with a file of nothing but line ends or commas', () => {
    expect(grid(`a,b${'\n'.repeat(5_000_000)}`)).toContain('more than 200000 rows');
    const wide = readCsv(utf8.encode(`a,b\n${`1${','.repeat(50_000)}\n`.repeat(50)}`));
    expect(wide.ok && Math.max(...wide.value.rows.map((row) => row.length))).toBe(201);
  });

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(typeof readCsv(bytes).ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
    const signs = fc.array(fc.constantFrom('"', ',', ';', '\n', '\r', 'a', "'", '\t', '\uFEFF'), {
      maxLength: 60,
    });
    fc.assert(
      fc.property(signs, (text) => {
        expect(typeof readCsv(utf8.encode(text.join(''))).ok).toBe('boolean');
      }),
      { numRuns: 1000 },
    );
  });
});
