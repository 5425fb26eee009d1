import { describe, expect, it } from 'vitest';
import { applyChanges } from '@/lib/what-if/apply-changes';
import type { Change } from '@/lib/what-if/change';
import { lineFacts } from '../../support/shop-record';
import { whatIfFacts } from '../../support/what-if-shop';

const facts = whatIfFacts({ lines: [lineFacts(), lineFacts({ id: 'J-2.1', jobId: 'J-2', goodCones: 9 })] });

function apply(...changes: Change[]) {
  const changed = applyChanges(facts, changes);
  if (!changed.ok) throw new Error(changed.refusal.sentence);
  return changed.value;
}

function refusal(change: Change): string {
  const changed = applyChanges(facts, [change]);
  return changed.ok ? '' : changed.refusal.sentence;
}

describe('applyChanges', () => {
  // source: identity.
  it('without a change the record is the very same object', () => {
    expect(apply().facts).toBe(facts);
  });

  // source: identity. What no change names stays the same object; the record that was given is not touched.
  it('touches only what the change names', () => {
    const before = JSON.stringify(facts);
    const { facts: after } = apply({ kind: 'change-material', lineId: 'J-1.1', materialId: '2507' });
    expect(after.lines[0]).toMatchObject({ id: 'J-1.1', materialId: '2507', ends: 24 });
    expect(after.lines[1]).toBe(facts.lines[1]);
    expect(after.tools).toBe(facts.tools);
    expect(JSON.stringify(facts)).toBe(before);
  });

  // source: hand.
  it('makes several changes at once, one on the other', () => {
    const { facts: after, slipDays } = apply(
      { kind: 'slip-order', orderId: 'PO-1', days: 14 },
      { kind: 'slip-order', orderId: 'PO-1', days: 7 },
      { kind: 'drop-line', lineId: 'J-2.1' },
      { kind: 'add-tool', partId: facts.tools.find(({ id }) => id === 'DIE-1')?.partId ?? '', quantity: 2 },
    );
    expect(slipDays.get('PO-1')).toBe(21);
    expect(after.lines.map(({ id }) => id)).toEqual(['J-1.1']);
    expect(after.tools.length).toBe(facts.tools.length + 2);
    expect(after.edges.length).toBe(facts.edges.length + 2);
  });

  // source: hand. Bodies and stocks are what sizes share and a line holds; the shop has one of each.
  it('an extra bench is one more of each shared body that the shop has', () => {
    const { facts: after } = apply({ kind: 'add-bench', quantity: 1 });
    const more = after.tools.slice(facts.tools.length).map(({ role }) => role);
    expect(more.sort()).toEqual(['coning-body', 'die-stock']);
  });

  // source: hand. Each names something that is not there, or cannot be.
  it.each<[Change, string]>([
    [{ kind: 'drop-line', lineId: 'J-9' }, 'no open line J-9'],
    [{ kind: 'slip-order', orderId: 'PO-9', days: 1 }, 'no open order PO-9'],
    [{ kind: 'lose-tool', toolId: 'X' }, 'no tool X'],
    [{ kind: 'add-tool', partId: 'no-part', quantity: 1 }, 'no part no-part'],
    [{ kind: 'add-order', partId: 'no-part', quantity: 1, promisedOnDay: '2026-04-01' }, 'no part'],
    [{ kind: 'change-material', lineId: 'J-1.1', materialId: 'unobtainium' }, 'not in the table'],
    [{ kind: 'change-ends', lineId: 'J-2.1', ends: 8 }, 'more ends made'],
    [{ kind: 'calibrate-tool', toolId: 'DIE-1', dueOnDay: '2027-01-01' }, 'nothing that is calibrated'],
    [{ kind: 'regrind-tool', toolId: 'DIE-1', backOnDay: '2026-04-01' }, 'only blades'],
  ])('refuses %o', (change, sentence) => {
    expect(refusal(change)).toContain(sentence);
  });
});
