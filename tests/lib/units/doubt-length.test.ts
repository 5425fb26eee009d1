import fc from 'fast-check';
import { expect, it } from 'vitest';
import { doubtLength, readLength } from '@/lib/units/doubt-length';
import type { LengthUnit } from '@/lib/units/parse-length';

const window = { leastMm: 5, mostMm: 20 };
const typed = (text: string, unit: LengthUnit) => readLength({ text, unit, field: 'threadLength' }, window);

// source: hand. 9.5 × 25.4 = 241.3; 0.4375 ÷ 25.4 = 0.0172; 0.4375 × 25.4 = 11.1.
it.each([
  ['9.5', 'in', '9.5 in is 241 mm: did you mean 9.5 mm?', '9.5', 'mm'],
  ['9.5 in', 'in', '9.5 in is 241 mm: did you mean 9.5 mm?', '9.5', 'mm'],
  ['0.4375', 'mm', '0.4375 mm is 0.017 in: did you mean 0.4375 in?', '0.4375', 'in'],
] as const)('doubts %s in %s', (text, unit, sentence, figure, meantUnit) => {
  const read = typed(text, unit);
  if (read.ok) throw new Error('a slip was let through');
  expect(read.refusal).toEqual({
    code: 'unit-slip',
    sentence,
    field: 'threadLength',
    meant: { figure, unit: meantUnit },
  });
});

// source: hand. In its window, or off in both units: no slip. A fraction is never meant in mm.
it('doubts nothing else', () => {
  expect(typed('9.5', 'mm').ok).toBe(true);
  expect(typed('7/16', 'in').ok).toBe(true);
  expect(typed('90', 'mm').ok).toBe(true);
  expect(typed('15/2', 'in').ok).toBe(true);
  const unread = typed('long', 'mm');
  expect(unread.ok || unread.refusal.field).toBe('threadLength');
});

// source: identity. A length inside its window, typed with the other unit, is always caught, and what was meant is that length.
it('catches every swap of the units', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5000, max: 20_000 }), (thousandths) => {
      const lengthMm = thousandths / 1000;
      const doubt = doubtLength({ lengthMm: lengthMm * 25.4, typed: String(lengthMm), unit: 'in' }, window);
      expect(doubt?.meant).toMatchObject({ unit: 'mm', lengthMm });
    }),
  );
});
