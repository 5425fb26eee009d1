import { expect, it } from 'vitest';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import type { SizeStatus } from '@/lib/capability/size-status';
import { movedLines, movedSizes } from '@/lib/what-if/moved-lines';

function verdict(lineId: string, change: Partial<LineVerdict> = {}): LineVerdict {
  return {
    lineId,
    jobId: lineId,
    verdict: 'can-make',
    canCut: true,
    canAccept: true,
    pMade: 0.95,
    blockers: [],
    clearsOnDay: null,
    safeEnds: 10,
    likelyEnds: 20,
    limitingRole: 'die',
    shorterEdge: 'die',
    ...change,
  };
}

// source: hand. A turns, B only stirs, C stays, D falls away, E is new.
it('movedLines: answers first, then chances, and how many stay', () => {
  const before = [verdict('A'), verdict('B'), verdict('C'), verdict('D')];
  const after = [
    verdict('A', { verdict: 'at-risk', pMade: 0.7 }),
    verdict('B', { pMade: 0.93 }),
    verdict('C'),
    verdict('E'),
  ];
  const { answers, chances, unmoved } = movedLines(before, after);
  expect(answers.map(({ lineId }) => lineId)).toEqual(['A', 'E', 'D']);
  expect(answers[1]?.before).toBeUndefined();
  expect(answers[2]?.after).toBeUndefined();
  expect(chances.map(({ lineId }) => lineId)).toEqual(['B']);
  expect(unmoved).toBe(1);
});

// source: hand.
it('movedSizes: those whose verdict or ends move', () => {
  const size = (connectionId: string, likelyEnds: number): SizeStatus => {
    const { lineId: _l, jobId: _j, ...rest } = verdict('', { likelyEnds });
    return { connectionId, ...rest };
  };
  const moved = movedSizes([size('S', 10), size('T', 10)], [size('S', 10), size('T', 4)]);
  expect(
    moved.map(({ connectionId, before, after }) => [connectionId, before.likelyEnds, after.likelyEnds]),
  ).toEqual([['T', 10, 4]]);
});
