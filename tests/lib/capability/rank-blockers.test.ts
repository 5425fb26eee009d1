import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { UnrankedBlocker } from '@/lib/capability/need-blockers';
import { rankBlockers } from '@/lib/capability/rank-blockers';
import type { Role } from '@/lib/shop/vocabulary';

function blocker(role: Role, clearsOnDay: string | null): UnrankedBlocker {
  return { kind: 'missing', role, phase: 'cut', hard: true, toolIds: [], clearsOnDay };
}

const short: UnrankedBlocker = {
  ...{ kind: 'life-short', role: 'die', phase: 'cut', hard: false, toolIds: [], clearsOnDay: null },
  ...{ pMade: 0.7, safeEnds: 1, likelyEnds: 2 },
};
const firstOff: UnrankedBlocker = { ...blocker('die', null), kind: 'needs-first-off' };

// source: hand. Hard before soft, no date before a date, the latest date first, then kind, then role.
const ranked = [
  blocker('die', null),
  blocker('blade', null),
  firstOff,
  blocker('die', '2026-04-01'),
  blocker('collet', '2026-03-20'),
  blocker('brush', '2026-03-20'),
  short,
];

it('rankBlockers puts the most limiting first, whatever the order of its input', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray(ranked, { minLength: ranked.length }), (shuffled) => {
      expect(rankBlockers(shuffled)).toEqual(ranked.map((b, i) => ({ ...b, rank: i + 1 })));
    }),
    { numRuns: 200, seed: 41 },
  );
});
