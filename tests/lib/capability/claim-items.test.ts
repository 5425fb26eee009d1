import { describe, expect, it } from 'vitest';
import type { Candidate } from '@/lib/capability/candidates';
import { type Claim, claimItems } from '@/lib/capability/claim-items';

function claim(lineId: string, from: number, to: number, ids: string, holds = true): Claim {
  const usable = [...ids].map(
    (id): Candidate => ({
      id,
      toolId: id,
      partId: 'p',
      role: 'coning-body',
      fits: 'all',
      newIndex: null,
      arrivalDayDraws: null,
      levelMl: 0,
      isUnused: false,
      standing: () => null,
    }),
  );
  return { lineId, startOnDay: `2026-03-0${from}`, dueOnDay: `2026-03-0${to}`, usable, holds };
}

const met = (...claims: Claim[]) => claimItems(claims).map((refusal) => refusal === null);

// source: hand. Bodies A, B, C among overlapping lines.
describe('claimItems', () => {
  it('one holder at a time, free again the day after the due day', () => {
    expect(met(claim('1', 1, 3, 'A'), claim('2', 4, 5, 'A'))).toEqual([true, true]);
    expect(claimItems([claim('1', 1, 3, 'A'), claim('2', 3, 5, 'A')])[1]).toEqual({
      heldByLineId: '1',
      untilDay: '2026-03-03',
      clearsOnDay: '2026-03-04',
      toolIds: ['A'],
    });
  });

  it('moves an earlier line to a body that only it can use', () => {
    expect(met(claim('1', 1, 3, 'AB'), claim('2', 2, 4, 'A'))).toEqual([true, true]);
    expect(
      met(claim('1', 1, 3, 'AB'), claim('2', 1, 3, 'BC'), claim('3', 2, 4, 'A'), claim('4', 3, 3, 'A')),
    ).toEqual([true, true, true, false]);
  });

  it('names the holder that comes free first', () => {
    const claims = [claim('1', 1, 9, 'A'), claim('2', 1, 5, 'B'), claim('3', 2, 4, 'AB')];
    expect(claimItems(claims)[2]).toMatchObject({ heldByLineId: '2', clearsOnDay: '2026-03-06' });
  });

  it('a stopped line is told and takes nothing', () => {
    expect(met(claim('1', 1, 5, 'A', false), claim('2', 2, 4, 'A'), claim('3', 3, 4, 'A', false))).toEqual([
      true,
      true,
      false,
    ]);
  });

  it('says nothing of a claim with no piece at all: that is another blocker', () => {
    expect(met(claim('1', 1, 5, ''), claim('2', 2, 4, 'A'))).toEqual([true, true]);
  });
});
