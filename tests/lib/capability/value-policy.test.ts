import { describe, expect, it } from 'vitest';
import { checkPlan } from '@/lib/capability/check-plan';
import type { SetItem } from '@/lib/capability/plan-input';
import { hasWay } from '@/lib/capability/value-policy';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, plan, planLine, setItem } from '../../support/plan-shop';

const PRECIOUS = { endsToMake: 4, requiredProbability: 0.95, cannotBeRemade: true };

/** Four ends of ten turns. Two worn dies: one lasts in 8 futures of 10, the other in 7; together in all of them. */
function verdictWith(items: SetItem[], more: Partial<Parameters<typeof plan>[0]> = {}) {
  const draws = statedDraws({
    drawCount: 10,
    tools: {
      DIE: [10, 10, 40, 40, 40, 40, 40, 40, 40, 40],
      D2: [45, 45, 45, 45, 45, 45, 45, 30, 30, 30],
      NEW: 500,
      BLADE: 1e7,
    },
    parts: { 'part-die': 500 },
    factors: { M: 1 },
  });
  const [line] = checkPlan(plan({ lines: [planLine(PRECIOUS)], items, draws, ...more }));
  return line;
}

const worn = [...completeSet(), setItem('die', { toolId: 'D2' })];

// source: hand. Counted over ten stated futures.
describe('work that cannot be remade', () => {
  it('two worn dies that last together are no way: an edge done in mid-line spoils an end', () => {
    const line = verdictWith(worn);
    expect(line?.pMade).toBe(1);
    expect(line?.verdict).toBe('at-risk');
    expect(line?.blockers).toMatchObject([
      { kind: 'no-sure-edge', role: 'die', pFinishes: 0.8, toolIds: ['DIE'] },
    ]);
    const policy = line?.valuePolicy?.find(({ kind }) => kind === 'die');
    expect(policy).toMatchObject({ isSureEnough: false, newToolIds: [], newOnOrder: 0 });
  });

  it('a new die opens the second way', () => {
    const line = verdictWith([...worn, setItem('die', { toolId: 'NEW', isUnused: true })]);
    expect(line?.verdict).toBe('can-make');
    const policy = line?.valuePolicy?.find(({ kind }) => kind === 'die');
    expect(policy?.newToolIds).toEqual(['NEW']);
    expect(policy && hasWay(policy)).toBe(true);
  });

  it('a new die on order that is there by the start opens it too; one that comes later says when', () => {
    const soon = verdictWith(worn, { arrivals: [arrival('die', { expectedOnDay: '2026-03-08' })] });
    expect(soon?.verdict).toBe('can-make');
    const late = verdictWith(worn, { arrivals: [arrival('die', { expectedOnDay: '2026-03-20' })] });
    expect(late).toMatchObject({ verdict: 'at-risk', clearsOnDay: '2026-03-20' });
  });

  it('one sure die opens the first way', () => {
    const line = verdictWith([...worn, setItem('die', { toolId: 'NEW' })]);
    expect(line?.verdict).toBe('can-make');
    expect(line?.valuePolicy?.find(({ kind }) => kind === 'die')).toMatchObject({
      surest: { toolId: 'NEW', pFinishes: 1 },
      isSureEnough: true,
    });
  });

  it('a line that can be remade asks for nothing of the kind', () => {
    const { cannotBeRemade: _, ...ordinary } = PRECIOUS;
    const draws = statedDraws({ drawCount: 1, tools: { DIE: 30, D2: 30, BLADE: 1e7 }, factors: { M: 1 } });
    const [line] = checkPlan(plan({ lines: [planLine(ordinary)], items: worn, draws }));
    expect(line?.verdict).toBe('can-make');
    expect(line).not.toHaveProperty('valuePolicy');
  });
});
