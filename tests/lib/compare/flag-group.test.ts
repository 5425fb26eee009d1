import { describe, expect, it } from 'vitest';
import { FLAG_MINIMUM, flagGroup } from '@/lib/compare/flag-group';
import type { EdgeHistory } from '@/lib/life/observation';
import { cut, edge } from '@/tests/support/edge-histories';
import { DIE_PRIORS } from '@/tests/support/small-shop';

function wornAt(key: string, turns: readonly number[]): EdgeHistory[] {
  return turns.map((base, i) => edge(`${key}${i}`, { before: [cut(base)], during: [cut(60)], end: 'worn' }));
}

const REST = wornAt('R', [1281, 1407, 1327, 884, 1208, 1638, 1113, 1549, 1100, 950, 1390, 1250]);

function judge(lot: readonly EdgeHistory[], ends = 40) {
  return flagGroup({
    groupedBy: 'lot',
    groupId: 'L-7',
    edges: lot.map((history) => ({ history, ends })),
    fit: { kind: 'die', histories: [...REST, ...lot], priors: DIE_PRIORS },
  });
}

describe('a lot', () => {
  it('that dies early is flagged, with its evidence', () => {
    const flag = judge(wornAt('L', [420, 510, 380, 460, 300]));
    expect(flag?.verdict).toBe('flagged');
    expect(flag?.effect.probabilityLower).toBeGreaterThan(0.95);
    expect(flag?.logRank?.p).toBeLessThan(0.01);
    expect(flag?.logRank?.groups.map(({ edges }) => edges)).toEqual([5, 12]);
  });

  it('that lasts like the rest is not', () => {
    expect(judge(wornAt('L', [1290, 1150, 1400, 980]))?.verdict).toBe('no-difference');
  });

  it('is never flagged on too little, however bad it looks', () => {
    expect(judge(wornAt('L', [60, 50]))?.verdict).toBe('too-few-edges');
    expect(judge(wornAt('L', [60, 50, 40]), FLAG_MINIMUM.ends / 3 - 1)?.verdict).toBe('too-few-ends');
    const good = [edge('G1', { before: [cut(90)] }), edge('G2', { before: [cut(90)] })];
    expect(judge([...wornAt('L', [60]), ...good])?.verdict).toBe('too-few-worn');
    expect(judge([])).toBeUndefined();
  });
});

// A heat is part of what an edge has cut, so there is no group of whole lives to test by ranks.
it('judges a heat by its share of each edge', () => {
  const lot = REST.slice(0, 4).map((history) => ({ ...history, toolId: `H${history.toolId}` }));
  const flag = flagGroup({
    groupedBy: 'heat',
    groupId: 'H-1',
    edges: lot.map((history) => ({ history, within: { before: [cut(200)], during: [] }, ends: 20 })),
    fit: { kind: 'die', histories: [...REST, ...lot], priors: DIE_PRIORS },
  });
  expect(flag?.verdict).toBe('no-difference');
  expect(flag?.logRank).toBeUndefined();
});
