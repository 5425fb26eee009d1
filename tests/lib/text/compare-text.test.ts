import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareText } from '@/lib/text/compare-text';

describe('compareText', () => {
  // source: hand. Character codes put capitals before small letters and digits before both, in every language.
  it.each([
    ['2026-09-30', '2026-10-01', -1],
    ['DIE-2', 'DIE-10', 1],
    ['Z', 'a', -1],
    ['D', 'D', 0],
    ['', 'D', -1],
  ] as const)('puts %o against %o', (a, b, order) => {
    expect(compareText(a, b)).toBe(order);
  });

  // source: identity. An order is antisymmetric, and sorting by it is the order that JavaScript sorts texts in by itself
  // (ECMAScript, Array.prototype.sort without a comparator: by UTF-16 code units).
  it('sorts as texts sort without a comparator', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 4 }), { maxLength: 8 }), (texts) => {
        expect([...texts].sort(compareText)).toEqual([...texts].sort());
        const [a = '', b = ''] = texts;
        expect(compareText(a, b)).toBe(compareText(b, a) === 0 ? 0 : -compareText(b, a));
      }),
    );
  });
});
