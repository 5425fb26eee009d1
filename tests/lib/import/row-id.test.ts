import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeRowIds } from '@/lib/import/row-id';
import { entryIdField } from '@/lib/shop/field';

const contents = fc.array(fc.string({ maxLength: 3 }), { maxLength: 30 });

describe('makeRowIds', () => {
  it('gives every row of a file an ID of its own, even equal rows', () => {
    fc.assert(
      fc.property(contents, (rows) => {
        const ids = rows.map(makeRowIds('cuts'));
        expect(new Set(ids).size).toBe(rows.length);
        for (const id of ids) expect(entryIdField.safeParse(id).success).toBe(true);
      }),
    );
  });

  it('gives the rows of a grown and shuffled file the IDs that they had', () => {
    fc.assert(
      fc.property(contents, contents, fc.integer(), (rows, added, turn) => {
        const grown = [...rows, ...added];
        const by = grown.length === 0 ? 0 : Math.abs(turn) % grown.length;
        const shuffled = [...grown.slice(by), ...grown.slice(0, by)];
        const after = new Set(shuffled.map(makeRowIds('cuts')));
        for (const id of rows.map(makeRowIds('cuts'))) expect(after.has(id)).toBe(true);
      }),
    );
  });

  it('tells kinds of file apart', () => {
    expect(makeRowIds('cuts')('x')).not.toBe(makeRowIds('tools')('x'));
  });
});
