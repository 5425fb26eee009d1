import { describe, expect, it } from 'vitest';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import { setNeeds } from '@/lib/capability/complete-set';
import type { SetItem } from '@/lib/capability/plan-input';
import { setChecklist } from '@/lib/capability/set-checklist';
import type { Role } from '@/lib/shop/vocabulary';
import { statedDraws } from '../../support/life-draws';
import { arrival, completeSet, plan, planLine, setItem, setWith } from '../../support/plan-shop';

function checklist(change: Partial<PlanInput> = {}, lineId = 'L1') {
  const input = plan(change);
  const verdict = checkPlan(input).find((line) => line.lineId === lineId);
  if (verdict === undefined) throw new Error(`line ${lineId} was asked`);
  return setChecklist(input, verdict);
}

function row(role: Role, change: Partial<PlanInput> = {}, lineId = 'L1') {
  const found = checklist(change, lineId).find(({ need }) => need.role === role);
  if (found === undefined) throw new Error(`${role} is needed`);
  return found;
}

// source: hand. Each case takes one thing from a complete set and reads the row of that one thing.
it('lists every need of the work in bench order, each with its tool', () => {
  const rows = checklist();
  expect(rows.map(({ need }) => need)).toEqual(setNeeds(['cone', 'thread']));
  for (const { need, state, toolIds } of rows)
    expect([state, toolIds]).toEqual(['met', [need.role.toUpperCase()]]);
});

it('puts what is missing with its blocker, and leaves the other needs met', () => {
  const missing = row('threading-guide', { items: setWith('threading-guide', null) });
  expect(missing).toMatchObject({ state: 'not-met', toolIds: [], blockers: [{ kind: 'missing', rank: 1 }] });
  expect(row('die', { items: setWith('threading-guide', null) }).state).toBe('met');
});

it('counts what comes on order in time, and not what comes late', () => {
  const items = setWith('collet', null);
  const inTime = row('collet', { items, arrivals: [arrival('collet', { expectedOnDay: '2026-03-09' })] });
  expect(inTime).toMatchObject({ state: 'coming', toolIds: [], onOrderCount: 1 });
  expect(inTime.coming).toEqual([{ toolId: null, fromDay: '2026-03-09', where: 'on-order', lineId: null }]);
  expect(row('collet', { items, arrivals: [arrival('collet')] }).state).toBe('not-met');
});

it('is at risk where the life in the die may not last', () => {
  const draws = statedDraws({ drawCount: 2, tools: { DIE: [50, 500], BLADE: 1e7 }, factors: { M: 1 } });
  expect(row('die', { draws })).toMatchObject({
    state: 'at-risk',
    toolIds: ['DIE'],
    blockers: [{ kind: 'life-short' }],
  });
});

it('names the tool that is out with the line before the others', () => {
  const twin = setItem('die', { toolId: 'Z-DIE', state: 'issued', heldForLineId: 'L1' });
  expect(row('die', { items: [...completeSet(), twin] }).toolIds).toEqual(['Z-DIE', 'DIE']);
});

it('does not give a piece to two overlapping lines', () => {
  const lines = [planLine(), planLine({ lineId: 'L2', dueOnDay: '2026-03-14' })];
  expect(row('collet', { lines }, 'L2')).toMatchObject({ state: 'not-met', toolIds: [] });
});

it('without a table row still says what is there and what is not', () => {
  const lines = [planLine({ connectionId: 'X' })];
  expect(row('die', { lines })).toMatchObject({ state: 'not-met', blockers: [{ kind: 'missing' }] });
  expect(row('fluid', { lines }).state).toBe('met');
});

it('is empty when nothing is left to make, and for a line not in the plan', () => {
  expect(checklist({ lines: [planLine({ endsToMake: 0 })] })).toEqual([]);
  expect(setChecklist(plan(), { lineId: 'no-such-line', blockers: [] })).toEqual([]);
});

describe('what is not here today', () => {
  const away = (role: Role, change: Partial<SetItem>) => row(role, { items: setWith(role, change) });

  // source: hand. The line starts on 9 March; each is back on the 6th, from another place.
  it.each([
    ['go-ring', { state: 'calibration', backOnDay: '2026-03-06' }, null],
    ['blade', { state: 'regrind', backOnDay: '2026-03-06' }, null],
    ['threading-guide', { state: 'issued', backOnDay: '2026-03-06' }, null],
    ['coning-guide', { state: 'in-crib', reservation: { jobLineId: 'L9', untilDay: '2026-03-05' } }, 'L9'],
  ] as const)('is coming, with its day and where it is: %s', (role, change, lineId) => {
    const found = away(role, change);
    expect(found).toMatchObject({ state: 'coming', toolIds: [role.toUpperCase()] });
    expect(found.coming).toEqual([
      { toolId: role.toUpperCase(), fromDay: '2026-03-06', where: change.state, lineId },
    ]);
  });

  it('comes back from another line on the day after it is due', () => {
    const other = planLine({ lineId: 'L0', startOnDay: '2026-03-02', dueOnDay: '2026-03-05' });
    const items = setWith('coning-guide', { state: 'issued', heldForLineId: 'L0' });
    const found = row('coning-guide', { items, lines: [other, planLine()] });
    expect(found).toMatchObject({ state: 'coming', coming: [{ fromDay: '2026-03-06', lineId: 'L0' }] });
  });

  it('is no matter where another is here, unless a line before it has that one', () => {
    const lab = setItem('go-ring', { toolId: 'RING-2', state: 'calibration', backOnDay: '2026-03-06' });
    const items = [...completeSet(), lab];
    expect(row('go-ring', { items })).toMatchObject({ state: 'met', coming: [{ toolId: 'RING-2' }] });
    const before = planLine({ lineId: 'L0', startOnDay: '2026-03-05', operations: ['thread'] });
    const others = completeSet().map((item): SetItem => ({ ...item, toolId: `${item.toolId}-B` }));
    const most = [...items, ...others.filter(({ role }) => role !== 'go-ring')];
    expect(row('go-ring', { items: most, lines: [before, planLine()] }).state).toBe('coming');
  });
});
