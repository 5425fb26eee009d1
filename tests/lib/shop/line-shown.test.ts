import { expect, it } from 'vitest';
import { LineShownSchema } from '@/lib/shop/line-shown';

const said = { lineNo: 1, verdict: 'at-risk', pMade: 0.7, ends: 24, edges: [{ kind: 'die', pLasts: 0.7 }] };

// source: hand. A chance lies between nought and one, and a line has ends to make.
it('takes what the plan said of a line, and nothing that it cannot have said', () => {
  expect(LineShownSchema.parse(said)).toEqual(said);
  for (const change of [
    { pMade: 1.2 },
    { ends: 0 },
    { verdict: 'sure' },
    { edges: [{ kind: 'tap', pLasts: 1 }] },
  ])
    expect(LineShownSchema.safeParse({ ...said, ...change }).success).toBe(false);
});
