import { describe, expect, it } from 'vitest';
import type { EdgeOutlook } from '@/lib/capability/edge-walk';
import { lifeOutlook } from '@/lib/capability/life-outlook';

/** Late pieces as stated: the day, counted from today, and the ends that there are from then on. */
function edge(kind: 'die' | 'blade', ends: number[], late: [number, number[]][] = []): EdgeOutlook {
  const waiting = {
    inDays: late.map(([inDays]) => inDays),
    endsBy: (day: number) =>
      late.reduce(
        (best, [inDays, more]) => (inDays <= day ? Float64Array.from(more) : best),
        Float64Array.from(ends),
      ),
  };
  return { kind, ends: Float64Array.from(ends), waiting };
}

// source: hand. Four draws, ten ends wanted, three draws of four required.
describe('lifeOutlook', () => {
  it('is undefined where no edge is worn', () => {
    expect(lifeOutlook([], 10, 0.75, '2026-03-02')).toBeUndefined();
  });

  it('names nobody short when the required share is met', () => {
    expect(lifeOutlook([edge('die', [10, 12, 15, 9])], 10, 0.75, '2026-03-02')).toEqual({
      pMade: 0.75,
      safeEnds: 10,
      likelyEnds: 12,
      shorterEdge: 'die',
      short: [],
      enoughFromDay: null,
    });
  });

  it('names the weaker when each alone would do and both together do not', () => {
    const both = [edge('blade', [9, 20, 20, 20]), edge('die', [20, 9, 20, 19])];
    expect(lifeOutlook(both, 10, 0.75, '2026-03-02')).toMatchObject({
      pMade: 0.5,
      shorterEdge: 'die',
      short: [{ kind: 'die', pMade: 0.75 }],
    });
  });

  it('waits for both edges when both are short', () => {
    const both = [
      edge('blade', [1, 1, 1, 1], [[8, [30, 30, 30, 30]]]),
      edge(
        'die',
        [2, 2, 2, 2],
        [
          [10, [5, 5, 5, 5]],
          [18, [30, 30, 30, 9]],
        ],
      ),
    ];
    expect(lifeOutlook(both, 10, 0.75, '2026-03-02')).toMatchObject({
      pMade: 0,
      shorterEdge: 'blade',
      enoughFromDay: '2026-03-20',
    });
    expect(lifeOutlook(both, 10, 0.9, '2026-03-02')?.enoughFromDay).toBeNull();
    expect(lifeOutlook(both, 10, 0.9, '2026-03-02')?.short).toHaveLength(2);
  });
});
