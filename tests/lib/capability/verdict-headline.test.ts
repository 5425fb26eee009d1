import { describe, expect, it } from 'vitest';
import type { BlockerReason } from '@/lib/capability/blocker';
import { checkPlan } from '@/lib/capability/check-plan';
import { verdictHeadline } from '@/lib/capability/verdict-headline';
import { plan, planLine, setWith } from '../../support/plan-shop';

// source: hand.
describe('verdictHeadline', () => {
  const [nothing] = checkPlan(plan({ lines: [planLine({ connectionId: '1-high' })], items: [] }));
  const [twoGone] = checkPlan(plan({ items: setWith('die', null).filter(({ role }) => role !== 'go-ring') }));
  const [fine] = checkPlan(plan());

  it('names the worst and counts the rest', () => {
    expect(nothing && verdictHeadline('1 in high pressure', nothing)).toBe(
      '1 in high pressure cannot be made: no table row, no die, no threading guide, no GO ring and 11 more',
    );
    expect(twoGone && verdictHeadline('9/16 in medium pressure', twoGone)).toBe(
      '9⁄16 in medium pressure cannot be made: no die, no GO ring',
    );
  });

  it('says nothing of a line that can be made', () => {
    expect(fine && verdictHeadline('3/8 in', fine)).toBe('');
  });

  it('has a short form for every kind of blocker', () => {
    const kinds: BlockerReason[] = [
      { kind: 'hand-mismatch', wanted: 'LH' },
      { kind: 'quarantined' },
      { kind: 'needs-first-off' },
      { kind: 'out-for-regrind', backOnDay: null },
      { kind: 'out-for-calibration', backOnDay: null },
      { kind: 'held-elsewhere', lineId: 'A', untilDay: null },
      { kind: 'held-elsewhere', lineId: null, untilDay: null },
      { kind: 'calibration-lapses', dueOnDay: null },
      { kind: 'fluid-not-permitted', why: 'material' },
      { kind: 'fluid-expired', expiresOnDay: '2026-03-01' },
      { kind: 'fluid-short', haveMl: 0, needMl: 1 },
      { kind: 'life-short', pMade: 0.6, safeEnds: 0, likelyEnds: 1 },
      { kind: 'unknown-material' },
    ];
    const base = { role: 'die', phase: 'cut', hard: true, toolIds: [], clearsOnDay: null, rank: 1 } as const;
    const said = kinds.map((reason) =>
      verdictHeadline('S', { verdict: 'at-risk', blockers: [{ ...base, ...reason }] }),
    );
    expect(new Set(said).size).toBe(kinds.length);
    expect(said[0]).toBe('S is at risk: no left hand die');
  });
});
