import { describe, expect, it } from 'vitest';
import type { LifeOutlook } from '@/lib/capability/life-outlook';
import { queueLines } from '@/lib/capability/line-order';
import { type LineFindings, lineVerdictOf } from '@/lib/capability/line-verdict-of';
import { planLine, TODAY } from '../../support/plan-shop';

function findings(pMade: number, change: Partial<LineFindings> = {}): LineFindings {
  const [queued] = queueLines([planLine()], [{ connectionId: 'S', hand: 'LH' }], TODAY);
  if (queued === undefined) throw new Error('one line was queued');
  const outlook: LifeOutlook = {
    pMade,
    safeEnds: 7,
    likelyEnds: 12,
    shorterEdge: 'blade',
    short: [],
    enoughFromDay: null,
  };
  const base = { queued, statuses: [], refusals: new Map(), fluid: undefined, outlook, materialKnown: true };
  return { ...base, policy: undefined, requiredProbability: 0.9, floorProbability: 0.5, ...change };
}

// source: hand.
describe('lineVerdictOf', () => {
  it('can make from the required probability, at risk from the floor, cannot below', () => {
    const verdicts = [1, 0.9, 0.8999, 0.5, 0.4999].map((p) => lineVerdictOf(findings(p)).verdict);
    expect(verdicts).toEqual(['can-make', 'can-make', 'at-risk', 'at-risk', 'cannot-make-now']);
  });

  it('a requirement below the floor is the floor', () => {
    expect(lineVerdictOf(findings(0.4, { requiredProbability: 0.3 })).verdict).toBe('can-make');
  });

  it('names the edge that would run out first when nothing blocks', () => {
    expect(lineVerdictOf(findings(1))).toMatchObject({
      limitingRole: 'blade',
      safeEnds: 7,
      likelyEnds: 12,
      clearsOnDay: null,
    });
  });

  it('knows nothing of an unknown material or size', () => {
    const unknown = lineVerdictOf(findings(1, { materialKnown: false, outlook: undefined }));
    expect(unknown).toMatchObject({
      verdict: 'cannot-make-now',
      pMade: 0,
      canCut: false,
      canAccept: false,
      safeEnds: null,
    });
    expect(unknown.blockers).toMatchObject([{ kind: 'unknown-material', role: null, rank: 1 }]);
    const [queued] = queueLines([planLine()], [], TODAY);
    if (queued === undefined) throw new Error('one line was queued');
    expect(lineVerdictOf(findings(1, { queued, outlook: undefined })).blockers).toMatchObject([
      { kind: 'unknown-connection' },
    ]);
  });

  it('a line that wears no edge is not short of life', () => {
    expect(lineVerdictOf(findings(1, { outlook: undefined }))).toMatchObject({
      verdict: 'can-make',
      pMade: 1,
      limitingRole: null,
    });
  });
});
