import { expect, it } from 'vitest';
import { detectDelimiter } from '@/lib/import/delimiter';

it('detectDelimiter looks at the first line only, outside quotes', () => {
  expect(detectDelimiter('a,b;c,d\n1;2;3;4;5')).toBe(',');
  expect(detectDelimiter('a;b;c\r\n1,5;2;3')).toBe(';');
  expect(detectDelimiter('a\tb\r1,2,3')).toBe('\t');
  expect(detectDelimiter('"a,b,c";"d,e"\n')).toBe(';');
  expect(detectDelimiter('"a\nb";c;d,e\n')).toBe(';');
  expect(detectDelimiter('one')).toBe(',');
  expect(detectDelimiter('')).toBe(',');
});
