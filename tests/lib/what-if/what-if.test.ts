import { describe, expect, it } from 'vitest';
import { applyChanges } from '@/lib/what-if/apply-changes';
import type { Change } from '@/lib/what-if/change';
import { changedDraws } from '@/lib/what-if/changed-draws';
import { whatIf } from '@/lib/what-if/what-if';
import { lineFacts } from '../../support/shop-record';
import { outlookOf, whatIfFacts } from '../../support/what-if-shop';

const facts = whatIfFacts({
  lines: [
    lineFacts({ ends: 20 }),
    lineFacts({ id: 'J-2.1', jobId: 'J-2', ends: 60, startOnDay: '2026-03-23', dueOnDay: '2026-03-27' }),
  ],
});
const outlook = outlookOf(facts);
const die = facts.tools.find(({ id }) => id === 'DIE-1')?.partId ?? '';

function tried(...changes: Change[]) {
  const answer = whatIf(outlook, changes);
  if (!answer.ok) throw new Error(answer.refusal.sentence);
  return answer.value;
}

describe('whatIf', () => {
  // source: identity. No change, no difference: to the last digit, lines and sizes.
  it('a null change gives the identical verdicts', () => {
    const same = tried();
    expect(same.lines).toEqual(outlook.lines);
    expect(same.sizes()).toEqual(outlook.sizes);
    expect(tried({ kind: 'slip-order', orderId: 'PO-1', days: 0 }).lines).toEqual(outlook.lines);
    expect(tried({ kind: 'change-ends', lineId: 'J-1.1', ends: 20 }).lines).toEqual(outlook.lines);
  });

  // source: identity. The arrays of tools that no change names are the very same, not copies.
  it('untouched tools, orders and materials keep their draws bit for bit', () => {
    const changes: Change[] = [
      { kind: 'add-tool', partId: die, quantity: 1 },
      { kind: 'regrind-tool', toolId: 'BLADE-1', backOnDay: '2026-03-05' },
      { kind: 'add-order', partId: die, quantity: 1, promisedOnDay: '2026-04-01' },
    ];
    const { ensemble } = outlook;
    const { draws } = tried(...changes).plan;
    expect(draws.residualLife('DIE-1')).toBe(ensemble.residualLife('DIE-1'));
    expect(draws.newLife(die, 0)).toBe(ensemble.newLife(die, 0));
    expect([...(draws.materialFactor('die', '2507') ?? [])]).toEqual([
      ...(ensemble.materialFactor('die', '2507') ?? []),
    ]);
    expect(draws.residualLife('BLADE-1')).not.toEqual(ensemble.residualLife('BLADE-1'));
    const before = tried().plan.arrivals.find(({ orderId }) => orderId === 'PO-1');
    const after = tried(...changes).plan.arrivals.find(({ orderId }) => orderId === 'PO-1');
    expect(after).toEqual(before);
    expect(changedDraws(ensemble, facts, facts)).toBe(ensemble);
  });

  // source: identity. Both ways to the same record give the same answer: the difference is the change and nothing else.
  it('a change and its opposite leave nothing behind', () => {
    const there = { kind: 'change-material', lineId: 'J-2.1', materialId: '2507' } as const;
    const back = { ...there, materialId: '316-cw' };
    expect(tried(there, back).lines).toEqual(outlook.lines);
    expect(tried(there).lines[1]?.pMade).toBeLessThan(outlook.lines[1]?.pMade ?? 0);
    expect(tried(there).lines[0]).toEqual(outlook.lines[0]);
  });

  // source: identity. A what-if of a loss is the plan of the shop that has lost it.
  it('says what the shop would say if it were entered', () => {
    const lost = facts.tools.map((tool) =>
      tool.id === 'DIE-1' ? { ...tool, state: 'lost' as const } : tool,
    );
    expect(tried({ kind: 'lose-tool', toolId: 'DIE-1' }).lines).toEqual(
      outlookOf({ ...facts, tools: lost }).lines,
    );
  });

  // source: formula. Each future's day moves on by the same number of days.
  it('a slip moves every future by its days, and helps nobody', () => {
    const [before] = tried().plan.arrivals;
    const [after] = tried({ kind: 'slip-order', orderId: 'PO-1', days: 21 }).plan.arrivals;
    const was = Array.from(before?.arrivalDayDraws ?? []);
    expect(was.length).toBe(outlook.ensemble.drawCount);
    expect(Array.from(after?.arrivalDayDraws ?? [])).toEqual(was.map((day) => day + 21));
    const slipped = tried({ kind: 'slip-order', orderId: 'PO-1', days: 21 }).lines;
    slipped.forEach((line, i) => {
      expect(line.pMade).toBeLessThanOrEqual(outlook.lines[i]?.pMade ?? 0);
    });
  });

  // source: hand. Brought forward by a year, an order is here when its receiving check is done, today at the soonest; one whose
  // day nobody confirmed is expected today then, not on a day that is past, which would make it late and never there.
  it('no order is brought forward to before today', () => {
    const early: Change = { kind: 'slip-order', orderId: 'PO-1', days: -365 };
    const [drawn] = tried(early).plan.arrivals;
    expect(Math.min(...Array.from(drawn?.arrivalDayDraws ?? [-1]))).toBe(1);
    const orders = facts.orders.map((order) => ({ ...order, statedOnDay: '' }));
    const unsaid = outlookOf({ ...facts, orders });
    const after = whatIf(unsaid, [early]);
    if (!after.ok) throw new Error(after.refusal.sentence);
    expect(after.value.plan.arrivals[0]?.expectedOnDay).toBe(facts.today);
    expect(after.value.lines[0]?.pMade).toBeGreaterThanOrEqual(unsaid.lines[0]?.pMade ?? 1);
  });

  // source: hand. A size without a table row and a material without one are refused or named, never guessed.
  it('is honest about what the futures do not know', () => {
    const line = {
      kind: 'add-line',
      connectionId: '1-high',
      materialId: '316-cw',
      ends: 4,
      startOnDay: '2026-03-09',
      dueOnDay: '2026-03-13',
      value: 'ordinary',
    } as const;
    const [unknown] = tried(line).lines.filter(({ lineId }) => lineId.startsWith('~'));
    expect(unknown?.blockers[0]?.kind).toBe('unknown-connection');
    expect(unknown?.pMade).toBe(0);
    const odd = tried({ ...line, connectionId: '3-8-medium', materialId: 'unobtainium' });
    const [strange] = odd.lines.filter(({ lineId }) => lineId.startsWith('~'));
    expect(strange).toMatchObject({ verdict: 'cannot-make-now', pMade: 0 });
    expect(strange?.blockers.map(({ kind }) => kind)).toContain('unknown-material');
  });

  // source: identity. applyChanges refuses, whatIf passes the sentence on.
  it('refuses what cannot be', () => {
    const refused = whatIf(outlook, [{ kind: 'lose-tool', toolId: 'NO-SUCH' }]);
    expect(refused.ok).toBe(false);
    expect(refused).toEqual(applyChanges(facts, [{ kind: 'lose-tool', toolId: 'NO-SUCH' }]));
  });
});
