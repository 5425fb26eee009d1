import { describe, expect, it } from 'vitest';
import { checkPlan, type PlanInput } from '@/lib/capability/check-plan';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import { arrival, completeSet, plan, planLine, setItem, setWith } from '../../support/plan-shop';

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

// source: hand. Each case takes one thing from a complete set; the dates are counted off by hand.
describe('checkPlan, hard needs', () => {
  it('says that a line with a complete set and plenty of life can be made', () => {
    expect(only({})).toMatchObject({
      verdict: 'can-make',
      canCut: true,
      canAccept: true,
      pMade: 1,
      blockers: [],
      clearsOnDay: null,
    });
  });

  it('names a missing guide, with the day on which one on order arrives', () => {
    const items = setWith('threading-guide', null);
    const base = { verdict: 'cannot-make-now', canCut: false, canAccept: true };
    expect(only({ items })).toMatchObject({ ...base, limitingRole: 'threading-guide', clearsOnDay: null });
    const ordered = only({ items, arrivals: [arrival('threading-guide')] });
    expect(ordered).toMatchObject({ ...base, clearsOnDay: '2026-03-20' });
    expect(kinds(ordered)).toEqual([['missing', 'threading-guide']]);
    const inTime = [arrival('threading-guide', { expectedOnDay: '2026-03-09' })];
    expect(only({ items, arrivals: inTime }).verdict).toBe('can-make');
    const slipped = [arrival('threading-guide', { expectedOnDay: '2026-03-01' })];
    expect(only({ items, arrivals: slipped }).clearsOnDay).toBeNull();
  });

  it('never takes a right-hand die or ring, and calls it what it is', () => {
    for (const role of ['die', 'go-ring', 'not-go-ring'] as const) {
      for (const hand of ['RH', undefined] as const) {
        const verdict = only({ items: setWith(role, { hand }) });
        expect(verdict.verdict).toBe('cannot-make-now');
        expect(verdict.blockers).toEqual([
          {
            kind: 'hand-mismatch',
            wanted: 'LH',
            role,
            phase: role === 'die' ? 'cut' : 'accept',
            hard: true,
            toolIds: [role.toUpperCase()],
            clearsOnDay: null,
            rank: 1,
          },
        ]);
      }
    }
    expect(only({ items: setWith('cone-gauge', { hand: undefined }) }).verdict).toBe('can-make');
  });

  it('a right-hand die on order is no way out', () => {
    const change = { items: setWith('die', null), arrivals: [arrival('die', { hand: 'RH' })] };
    expect(only(change).clearsOnDay).toBeNull();
  });

  it('knows quarantine, first-off, regrind, calibration and loan', () => {
    const cases = [
      ['die', { state: 'quarantined' }, 'quarantined', null],
      ['blade', { needsFirstOff: true }, 'needs-first-off', null],
      ['blade', { state: 'regrind', backOnDay: '2026-03-16' }, 'out-for-regrind', '2026-03-16'],
      ['go-ring', { state: 'calibration', backOnDay: '2026-03-17' }, 'out-for-calibration', '2026-03-17'],
      ['coning-body', { state: 'issued', backOnDay: '2026-03-18' }, 'held-elsewhere', '2026-03-18'],
      ['coning-body', { state: 'issued' }, 'held-elsewhere', null],
      ['coning-body', { state: 'issued', backOnDay: '2026-02-20' }, 'held-elsewhere', null],
      ['collet', { state: 'lost' }, 'missing', null],
      ['collet', { state: 'scrapped' }, 'missing', null],
    ] as const;
    for (const [role, change, kind, clearsOnDay] of cases) {
      const verdict = only({ items: setWith(role, change) });
      expect(kinds(verdict), kind).toEqual([[kind, role]]);
      expect(verdict, kind).toMatchObject({ verdict: 'cannot-make-now', clearsOnDay });
    }
    const backInTime = setWith('go-ring', {
      state: 'calibration',
      backOnDay: '2026-03-09',
      dueOnDay: '2026-03-01',
    });
    expect(only({ items: backInTime }).verdict).toBe('can-make');
  });

  it('asks for a torque wrench only when the joint is assembled', () => {
    const items = setWith('torque-wrench', null);
    expect(only({ items }).verdict).toBe('can-make');
    const lines = [planLine({ operations: ['assemble'], exposurePerEnd: {} })];
    expect(only({ items, lines })).toMatchObject({
      verdict: 'cannot-make-now',
      canCut: true,
      canAccept: true,
    });
    expect(only({ lines })).toMatchObject({ verdict: 'can-make', safeEnds: null, pMade: 1 });
  });

  it('scenario 13: the gauge due during the job stops acceptance, not cutting, unless its twin is in date', () => {
    const items = setWith('go-ring', { dueOnDay: '2026-03-12' });
    const verdict = only({ items });
    expect(verdict).toMatchObject({ verdict: 'cannot-make-now', canCut: true, canAccept: false });
    expect(verdict.blockers[0]).toMatchObject({ kind: 'calibration-lapses', dueOnDay: '2026-03-12' });
    expect(only({ items: setWith('go-ring', { dueOnDay: '2026-03-13' }) }).verdict).toBe('can-make');
    const twin = setItem('go-ring', { toolId: 'GO-2' });
    expect(only({ items: [...items, twin] }).verdict).toBe('can-make');
    expect(only({ items: setWith('go-ring', { dueOnDay: null }) }).blockers[0]).toMatchObject({
      dueOnDay: null,
    });
  });

  it('scenario 14: a size without a table row lists all that is missing and asks for no dimensions', () => {
    const lines = [planLine({ connectionId: '1-high', exposurePerEnd: {} })];
    const universal = setWith('brush', { fitsConnectionIds: 'all' });
    const verdict = only({ lines, items: universal });
    expect(verdict).toMatchObject({
      verdict: 'cannot-make-now',
      pMade: 0,
      canCut: false,
      canAccept: false,
      safeEnds: null,
    });
    expect(kinds(verdict)).toEqual([
      ['unknown-connection', null],
      ['missing', 'die'],
      ['missing', 'threading-guide'],
      ['missing', 'go-ring'],
      ['missing', 'not-go-ring'],
      ['missing', 'blade'],
      ['missing', 'coning-guide'],
      ['missing', 'cone-gauge'],
      ['missing', 'length-gauge'],
      ['missing', 'collet'],
      ['missing', 'coning-body'],
      ['missing', 'die-stock'],
      ['missing', 'deburr-tool'],
    ]);
    expect(verdict.blockers.map(({ rank }) => rank)).toEqual(verdict.blockers.map((_, i) => i + 1));
  });

  it('refuses a material that the ensemble does not know', () => {
    const verdict = only({ lines: [planLine({ materialId: 'X' })] });
    expect(verdict).toMatchObject({ verdict: 'cannot-make-now', pMade: 0, safeEnds: null });
    expect(kinds(verdict)).toEqual([['unknown-material', null]]);
  });

  it('fluid must be permitted, in date through the due day, and enough for the lines in order', () => {
    const lot = (change: object) => only({ items: setWith('fluid', change) }).blockers;
    expect(lot({ permittedMaterialIds: ['Ti'] })).toMatchObject([{ kind: 'fluid-not-permitted' }]);
    expect(lot({ permittedMaterialIds: undefined })).toMatchObject([{ kind: 'fluid-not-permitted' }]);
    expect(lot({ expiresOnDay: '2026-03-12' })).toMatchObject([
      { kind: 'fluid-expired', expiresOnDay: '2026-03-12' },
    ]);
    expect(lot({ expiresOnDay: '2026-03-13' })).toEqual([]);
    expect(lot({ levelMl: undefined })).toMatchObject([{ kind: 'fluid-short', haveMl: 0, needMl: 10 }]);
    const lines = [planLine(), planLine({ lineId: 'L2', startOnDay: '2026-03-16', dueOnDay: '2026-03-18' })];
    const [first, second] = verdicts({ lines, items: setWith('fluid', { levelMl: 15 }) });
    expect(first?.verdict).toBe('can-make');
    expect(second?.blockers).toMatchObject([
      { kind: 'fluid-short', haveMl: 5, needMl: 10, clearsOnDay: null },
    ]);
    const can = arrival('fluid', { levelMl: 1000, permittedMaterialIds: ['M'], expectedOnDay: '2026-03-25' });
    const [, late] = verdicts({ lines, items: setWith('fluid', { levelMl: 15 }), arrivals: [can] });
    expect(late?.clearsOnDay).toBe('2026-03-25');
  });

  it('puts what has no date before what has one, and the latest date first', () => {
    const items = completeSet().map((item) => {
      if (item.role === 'coning-guide') return { ...item, state: 'quarantined' as const };
      if (item.role === 'blade') return { ...item, state: 'regrind' as const, backOnDay: '2026-03-16' };
      if (item.role === 'go-ring') return { ...item, state: 'calibration' as const, backOnDay: '2026-03-24' };
      return item;
    });
    const verdict = only({ items });
    expect(verdict.blockers.map(({ role }) => role)).toEqual(['coning-guide', 'go-ring', 'blade']);
    expect(verdict.clearsOnDay).toBeNull();
  });
});
