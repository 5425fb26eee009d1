import { describe, expect, it } from 'vitest';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, plan, planLine, setWith } from '../../support/plan-shop';

function verdicts(change: Partial<PlanInput>): LineVerdict[] {
  return checkPlan(plan(change));
}

function only(change: Partial<PlanInput>): LineVerdict {
  const [verdict] = verdicts(change);
  if (verdict === undefined) throw new Error('one line was asked');
  return verdict;
}

/** Blockers without their rank, as the hand-built cases state them. */
function kinds(verdict: LineVerdict) {
  return verdict.blockers.map(({ kind, role }) => [kind, role]);
}

// source: hand. One set, lines that overlap or follow.
describe('checkPlan, lines against each other', () => {
  const first = planLine({ lineId: 'A' });
  const after = planLine({ lineId: 'B', startOnDay: '2026-03-14', dueOnDay: '2026-03-16' });
  const during = planLine({ lineId: 'B', startOnDay: '2026-03-11', dueOnDay: '2026-03-16' });

  it('scenario 5: two benches want the only die: the first holds it, the second hears until when', () => {
    expect(verdicts({ lines: [first, after] }).map(({ verdict }) => verdict)).toEqual([
      'can-make',
      'can-make',
    ]);
    const shared = setWith('die', {}).flatMap((item) =>
      item.role === 'die' ? [item] : [item, { ...item, toolId: `${item.toolId}-2` }],
    );
    const [a, b] = verdicts({ lines: [during, first], items: shared });
    expect(a).toMatchObject({ lineId: 'A', verdict: 'can-make' });
    expect(b).toMatchObject({ lineId: 'B', verdict: 'cannot-make-now', clearsOnDay: '2026-03-14' });
    expect(b?.blockers).toMatchObject([
      { kind: 'held-elsewhere', role: 'die', lineId: 'A', untilDay: '2026-03-13', toolIds: ['DIE'] },
    ]);
  });

  it('a tool issued to a line serves that line now and others from the day after it is due', () => {
    const items = setWith('coning-body', { state: 'issued', heldForLineId: 'A' });
    expect(verdicts({ lines: [first, after], items }).map(({ verdict }) => verdict)).toEqual([
      'can-make',
      'can-make',
    ]);
    const waiting = planLine({ lineId: 'B', startOnDay: '2026-03-05', dueOnDay: '2026-03-06' });
    const [b] = verdicts({ lines: [first, waiting], items });
    expect(b?.blockers).toMatchObject([{ kind: 'held-elsewhere', lineId: 'A', clearsOnDay: '2026-03-14' }]);
  });

  it('brushes, deburring tools and fluid are handed across the bench', () => {
    const passed = ['brush', 'deburr-tool', 'fluid', 'torque-wrench'];
    const items = completeSet().flatMap((item) =>
      passed.includes(item.role) ? [item] : [item, { ...item, toolId: `${item.toolId}-2` }],
    );
    expect(verdicts({ lines: [first, during], items }).map(({ verdict }) => verdict)).toEqual([
      'can-make',
      'can-make',
    ]);
  });

  it('a line that cannot be cut and has no date holds nothing back from the next', () => {
    const stopped = planLine({ lineId: 'A', connectionId: 'T' });
    const items = completeSet().map((item) =>
      item.role === 'coning-body' ? { ...item, fitsConnectionIds: ['S', 'T'] } : item,
    );
    const connections = ['S', 'T'].map((connectionId) => ({ connectionId, hand: 'LH' as const }));
    const [a, b] = verdicts({ lines: [stopped, during], items, connections });
    expect(a?.verdict).toBe('cannot-make-now');
    expect(b?.verdict).toBe('can-make');
  });

  it('a line that should have begun begins now, and one with no ends left needs nothing', () => {
    const overdue = planLine({ startOnDay: '2026-02-01', dueOnDay: '2026-02-05' });
    expect(only({ lines: [overdue], items: setWith('go-ring', { dueOnDay: '2026-03-01' }) }).canAccept).toBe(
      false,
    );
    expect(only({ lines: [overdue], items: setWith('go-ring', { dueOnDay: '2026-03-02' }) }).canAccept).toBe(
      true,
    );
    expect(only({ lines: [planLine({ endsToMake: 0 })], items: [] })).toMatchObject({
      verdict: 'can-make',
      blockers: [],
    });
  });
});

describe('checkPlan, lives', () => {
  const draws = (die: readonly number[], blade: readonly number[] = [1e6]) =>
    statedDraws({
      drawCount: 10,
      tools: { DIE: die, BLADE: blade },
      parts: { 'part-die': 60 },
      factors: { M: 1 },
    });

  // source: hand. Ten ends take 100 turns; the share of ten draws that have them is counted off.
  it('verdict by the share of futures: 9 of 10 can make, 5 to 8 at risk, fewer cannot', () => {
    const have = (n: number) => draws(Array.from({ length: 10 }, (_, k) => (k < n ? 100 : 99)));
    const said = [10, 9, 8, 5, 4].map((n) => only({ draws: have(n) }));
    expect(said.map(({ verdict }) => verdict)).toEqual([
      'can-make',
      'can-make',
      'at-risk',
      'at-risk',
      'cannot-make-now',
    ]);
    expect(said.map(({ pMade }) => pMade)).toEqual([1, 0.9, 0.8, 0.5, 0.4]);
    expect(said.map(({ safeEnds }) => safeEnds)).toEqual([10, 10, 9, 9, 9]);
    expect(said.map(({ likelyEnds }) => likelyEnds)).toEqual([10, 10, 10, 10, 9]);
    expect(said[2]?.blockers).toMatchObject([
      {
        kind: 'life-short',
        role: 'die',
        hard: false,
        pMade: 0.8,
        safeEnds: 9,
        likelyEnds: 10,
        clearsOnDay: null,
      },
    ]);
    expect(said[4]?.canCut).toBe(true);
    const [strict] = verdicts({ draws: have(9), lines: [planLine({ requiredProbability: 0.95 })] });
    expect(strict?.verdict).toBe('at-risk');
  });

  // source: hand. Blade fails in two draws, die in two others: both last in six of ten.
  it('blade and die must last in the same future', () => {
    const die = [99, 99, 100, 100, 100, 100, 100, 100, 100, 100];
    const blade = [1000, 1000, 999, 999, 1000, 1000, 1000, 1000, 1000, 1000];
    const verdict = only({ draws: draws(die, blade) });
    expect(verdict.pMade).toBe(0.6);
    expect(verdict.blockers.map(({ role }) => role)).toEqual(['die', 'blade']);
  });

  // source: hand. 40 turns here and 60 on order make the 100.
  it('a die that comes before the due day helps to finish; one that comes later gives the date', () => {
    const short = { draws: draws([40]) };
    expect(only({ ...short, arrivals: [arrival('die', { expectedOnDay: '2026-03-12' })] }).verdict).toBe(
      'can-make',
    );
    const late = only({ ...short, arrivals: [arrival('die', { expectedOnDay: '2026-03-13' })] });
    expect(late).toMatchObject({ verdict: 'cannot-make-now', pMade: 0, clearsOnDay: '2026-03-13' });
  });

  // source: hand. No die by the start is a hard need that fails, though the one to come would do.
  it('a die that comes after the start cannot begin the line', () => {
    const change = { items: setWith('die', null), draws: draws([0]) };
    const lines = [planLine({ endsToMake: 6 })];
    const verdict = only({ ...change, lines, arrivals: [arrival('die', { expectedOnDay: '2026-03-11' })] });
    expect(verdict).toMatchObject({ verdict: 'cannot-make-now', pMade: 0, clearsOnDay: '2026-03-11' });
    expect(kinds(verdict)).toEqual([['missing', 'die']]);
  });

  // source: hand. 2507 at 2.5: 250 turns of a factor-1 life for ten ends.
  it('counts the material in every draw', () => {
    const super250 = statedDraws({ drawCount: 1, tools: { DIE: 249, BLADE: 1e6 }, factors: { M: 2.5 } });
    expect(only({ draws: super250 })).toMatchObject({ pMade: 0, safeEnds: 9, limitingRole: 'die' });
  });

  it('a tool that the ensemble does not know is never assumed to last', () => {
    const unknown = statedDraws({ drawCount: 1, tools: { BLADE: 1e6 }, factors: { M: 1 } });
    expect(only({ draws: unknown })).toMatchObject({ pMade: 0, verdict: 'cannot-make-now' });
  });
});
