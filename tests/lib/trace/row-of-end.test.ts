import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rowOfEnd } from '@/lib/trace/row-of-end';

const rows = fc.array(fc.record({ goodEnds: fc.integer({ min: 0, max: 20 }) }), { maxLength: 12 });

// source: identity. Every good end of a row falls in that row, one after another, and the next one falls in none.
it('numbers the good ends along the rows', () => {
  fc.assert(
    fc.property(rows, (log) => {
      const named = log.map((row, at) => ({ ...row, at }));
      const each = named.flatMap((row) => Array.from({ length: row.goodEnds }, () => row.at));
      expect(each.map((_, index) => rowOfEnd(named, index + 1)?.at)).toEqual(each);
      expect(rowOfEnd(named, each.length + 1)).toBeUndefined();
      expect(rowOfEnd(named, 0)).toBeUndefined();
    }),
  );
});
