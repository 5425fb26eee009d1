import { expect, it } from 'vitest';
import { fluidSupply, plannedMlOfLine, productFor } from '@/lib/outlook/fluid-supply';
import { lineFacts, orderFacts, setParts, shopRecord, toolFacts } from '../../support/shop-record';

const part = setParts().find(({ role }) => role === 'fluid');
if (part === undefined) throw new Error('a complete set has a fluid');
const bottle = toolFacts({ id: 'F-1', role: 'fluid', levelMl: 500, openedOnDay: '2026-02-01' });

// source: hand. Common practice: 10 + 3 × ⌈10.5 ÷ 2⌉ = 28 drops to a 3/8 medium end (10.5 turns), 0.7 mL at 40; 24 ends.
it('a line plans its cones and its threads, each by what is left of it', () => {
  const facts = shopRecord();
  expect(plannedMlOfLine(facts, lineFacts())).toBeCloseTo(24 * 0.7, 9);
  expect(plannedMlOfLine(facts, lineFacts({ goodCones: 24 }))).toBeCloseTo((24 * 18) / 40, 9);
  expect(plannedMlOfLine(facts, lineFacts({ connectionId: 'none' }))).toBe(0);
});

// source: hand. The line runs from 9 to 13 March, five days; the log then goes on at 182 × 40 drops in 182 days, 1 mL a day.
it('spreads the plan’s lines over their days, and goes on at the log’s pace', () => {
  const rows = [{ onDay: '2026-02-01', materialId: '316-cw', drops: 182 * 40, fluidId: null }];
  const supply = fluidSupply(shopRecord({ tools: [bottle], fluidLog: { levels: [], rows } }));
  const [line, pace] = supply.demands;
  expect(line?.plannedMlPerDay).toBeCloseTo((24 * 0.7) / 5, 9);
  expect(pace?.fromDay).toBe('2026-03-14');
  expect(pace?.plannedMlPerDay).toBeCloseTo(1, 9);
  expect(supply.pacePlannedMl.get(part.id)).toBeCloseTo(1, 9);
});

// source: hand. The set’s oil is kept off titanium, so no product serves it; steel is served by what is here.
it('names the product that serves a work', () => {
  const facts = shopRecord({ tools: [bottle] });
  const titanium = { materialId: 'ti-2', titanium: true, duty: 'ordinary' } as const;
  expect(productFor(facts, titanium)).toBeUndefined();
  expect(fluidSupply(facts).productOf(titanium)).toBeUndefined();
  expect(fluidSupply(facts).productOf({ ...titanium, titanium: false, materialId: '316-cw' })).toBe(part.id);
});

// source: hand. What is on order adds its cans on its day; a late order has no day and adds nothing.
it('counts what is on order from its day', () => {
  const order = (expectedOnDay: string) =>
    orderFacts({ id: 'PO-1', partId: part.id, quantity: 2, expectedOnDay });
  const level = (expectedOnDay: string) =>
    fluidSupply(
      shopRecord({ tools: [bottle], lines: [], orders: [order(expectedOnDay)] }),
    ).courses[0]?.levelMl.get(part.id);
  expect(level('2026-03-14')?.[30]).toBeCloseTo(500 + 2 * (part.containerMl ?? 0), 9);
  expect(level('2026-03-14')?.[5]).toBeCloseTo(500, 9);
  expect(level('2026-02-01')?.[30]).toBeCloseTo(500, 9);
});
