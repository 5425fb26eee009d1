import { describe, expect, it } from 'vitest';
import { checkPlan } from '@/lib/capability/check-plan';
import { cutsLeftOf } from '@/lib/capability/cuts-left';
import { statedDraws } from '../../support/life-draws';
import { plan, planLine } from '../../support/plan-shop';

// source: hand. Ten ends to make, of which eight are coned: 2 cones of 100 mm³ and 10 threads of 10 turns.
describe('cones and threads apart', () => {
  it('counts what each kind of edge still has to do', () => {
    const line = { endsToMake: 10, cutsLeft: { cone: 2, thread: 10 } };
    expect([cutsLeftOf(line, 'blade'), cutsLeftOf(line, 'die')]).toEqual([2, 10]);
    expect(cutsLeftOf({ endsToMake: 10 }, 'blade')).toBe(10);
    expect(() => cutsLeftOf({ endsToMake: 1, cutsLeft: { cone: 2, thread: 1 } }, 'blade')).toThrow(
      'invariant',
    );
  });

  const draws = (cones: number[]) =>
    statedDraws({ drawCount: 2, tools: { DIE: 1e6, BLADE: cones.map((n) => n * 100) }, factors: { M: 1 } });
  const asked = (line: Parameters<typeof planLine>[0], cones: number[]) =>
    checkPlan(plan({ lines: [planLine(line)], draws: draws(cones) }))[0];

  it('a blade with three cones left makes the two that are left, and eleven ends of the line', () => {
    expect(asked({}, [3, 3])).toMatchObject({ verdict: 'cannot-make-now', pMade: 0, safeEnds: 3 });
    const begun = asked({ cutsLeft: { cone: 2, thread: 10 } }, [3, 3]);
    expect(begun).toMatchObject({ verdict: 'can-make', pMade: 1, safeEnds: 11 });
  });

  it('asks the same of the blade as a line with so many ends', () => {
    const begun = asked({ cutsLeft: { cone: 2, thread: 10 } }, [1, 2]);
    expect(begun?.pMade).toBe(asked({ endsToMake: 2 }, [1, 2])?.pMade);
    expect(begun).toMatchObject({ verdict: 'at-risk', pMade: 0.5, shorterEdge: 'blade' });
  });

  it('leaves the rest of the blade to the lines after it', () => {
    const after = planLine({ lineId: 'L2', endsToMake: 3, startOnDay: '2026-03-16', dueOnDay: '2026-03-17' });
    const lines = (cutsLeft?: { cone: number; thread: number }) => [planLine({ cutsLeft }), after];
    const second = (cutsLeft?: { cone: number; thread: number }) =>
      checkPlan(plan({ lines: lines(cutsLeft), draws: draws([5, 5]) }))[1]?.pMade;
    expect([second(), second({ cone: 2, thread: 10 })]).toEqual([0, 1]);
  });

  it('asks of the one sure edge no more than its own cuts', () => {
    const line = { cannotBeRemade: true, requiredProbability: 0.95, cutsLeft: { cone: 2, thread: 10 } };
    const policy = asked(line, [2, 2])?.valuePolicy?.find(({ kind }) => kind === 'blade');
    expect(policy).toMatchObject({ isSureEnough: true, surest: { toolId: 'BLADE', pFinishes: 1 } });
  });
});
