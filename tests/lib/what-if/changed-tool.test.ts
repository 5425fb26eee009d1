import { expect, it } from 'vitest';
import { changeTool } from '@/lib/what-if/changed-tool';
import { toolFacts } from '../../support/shop-record';
import { whatIfFacts } from '../../support/what-if-shop';

const tools = [
  toolFacts({ id: 'RING', role: 'go-ring', state: 'quarantined', dueOnDay: '2026-01-01' }),
  toolFacts({ id: 'BLADE', role: 'blade', state: 'issued', jobLineId: 'J-1.1', firstOffOwed: true }),
  toolFacts({ id: 'GONE', role: 'die', state: 'lost' }),
];
const facts = whatIfFacts({ tools });

function changed(change: Parameters<typeof changeTool>[1]) {
  const result = changeTool(facts, change);
  return result.ok ? result.value.tools.find(({ id }) => id === change.toolId) : result.refusal.sentence;
}

// source: hand.
it('changeTool: lost, back in the crib, calibrated, at the grinder', () => {
  expect(changed({ kind: 'lose-tool', toolId: 'BLADE' })).toMatchObject({ state: 'lost', jobLineId: null });
  expect(changed({ kind: 'free-tool', toolId: 'BLADE' })).toMatchObject({
    state: 'in-crib',
    firstOffOwed: false,
  });
  expect(changed({ kind: 'calibrate-tool', toolId: 'RING', dueOnDay: '2027-03-02' })).toMatchObject({
    state: 'in-crib',
    dueOnDay: '2027-03-02',
  });
  expect(changed({ kind: 'regrind-tool', toolId: 'BLADE', backOnDay: '2026-03-20' })).toMatchObject({
    state: 'regrind',
    backOnDay: '2026-03-20',
  });
  expect(changed({ kind: 'lose-tool', toolId: 'GONE' })).toContain('no tool GONE');
});
