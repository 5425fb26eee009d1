import { expect, it } from 'vitest';
import { type ConditionNeed, dueBeforeDone, judgeCondition } from '@/lib/kit/judge-condition';
import type { KitTool } from '@/lib/kit/judge-custody';
import type { Part } from '@/lib/shop/part';
import { TOOL_STATES } from '@/lib/shop/vocabulary';
import { DIE, FLUID, RING } from '../../support/db';
import { toolAfter } from '../../support/entry';

const NEED: ConditionNeed = {
  today: '2026-03-02',
  fluidWork: { materialId: '316', titanium: false, duty: 'ordinary' },
  bottles: [],
};
const tool = (of: Part, over: Partial<KitTool> = {}): KitTool => ({
  ...toolAfter(of.role),
  ...{
    partId: of.id,
    hand: of.hand,
    holderName: null,
    edgeEnded: false,
    endsUsedUp: false,
    lotChlorinated: null,
  },
  ...over,
});
const stop = (of: Part, over: Partial<KitTool> = {}, need: Partial<ConditionNeed> = {}) =>
  judgeCondition(tool(of, over), of, { ...NEED, ...need });

// source: hand. A gauge is good to the end of its day; one without a day was never calibrated.
it('asks a die for its edge and a gauge for its calibration', () => {
  expect(stop(DIE)).toBeNull();
  expect(stop(DIE, { edgeEnded: true })?.[0]).toBe('edge-ended');
  expect(stop(RING, { dueOnDay: '2026-03-02' })).toBeNull();
  expect(stop(RING, { dueOnDay: '2026-03-01' })?.[0]).toBe('calibration');
  expect(stop(RING, { dueOnDay: null })?.[0]).toBe('calibration');
  expect(stop(RING, { dueOnDay: '2026-12-31', endsUsedUp: true })).toEqual([
    'calibration',
    'T-1 has gauged as many ends as one calibration is good for. Do not accept with this gauge; send it out and take another.',
  ]);
  expect(stop(DIE, { endsUsedUp: true })).toBeNull();
});

// source: identity. Custody is asked elsewhere: at the bench and in the crib a gauge is as good as it is.
it('does not ask where a gauge or a die stands', () => {
  for (const state of TOOL_STATES) {
    expect(stop(DIE, { state, firstOffOwed: true })).toBeNull();
    expect(stop(RING, { state, dueOnDay: '2026-03-01' })?.[0]).toBe('calibration');
  }
});

// source: published. Practice notes on titanium (no chlorine), DoDM 4140.27 (shelf life, opened life, extension); flags by hand.
it('Q8, Q22, Q23: asks a bottle for material, service, chlorine of its lot, day with extension, and level', () => {
  const titanium: Partial<ConditionNeed> = {
    fluidWork: { materialId: 'ti-2', titanium: true, duty: 'ordinary' },
  };
  const oxygen: Partial<ConditionNeed> = { fluidWork: { ...NEED.fluidWork, duty: 'oxygen' } };
  const cases: [Part, Partial<KitTool>, Partial<ConditionNeed>, string | undefined][] = [
    [FLUID, {}, {}, undefined],
    [{ ...FLUID, permittedMaterialIds: ['2507'] }, {}, {}, 'fluid-not-permitted'],
    [FLUID, {}, oxygen, 'fluid-not-permitted'],
    [{ ...FLUID, permittedDuties: ['oxygen'] }, {}, oxygen, undefined],
    [{ ...FLUID, chlorinated: 'no' }, {}, titanium, undefined],
    [{ ...FLUID, chlorinated: 'no' }, { lotChlorinated: 'yes' }, titanium, 'fluid-not-permitted'],
    [{ ...FLUID, chlorinated: 'yes' }, { lotChlorinated: 'no' }, titanium, undefined],
    [FLUID, { lotChlorinated: 'unknown' }, titanium, 'fluid-not-permitted'],
    [FLUID, { expiresOnDay: '2026-03-01' }, {}, 'fluid-date'],
    [FLUID, { expiresOnDay: '2026-03-01', extendedUntilDay: '2026-03-02' }, {}, undefined],
    [{ ...FLUID, openedLifeDays: 30 }, { openedOnDay: '2026-01-30' }, {}, 'fluid-date'],
    [FLUID, { levelMl: 0 }, {}, 'fluid-empty'],
    [FLUID, { state: 'quarantined' }, {}, 'quarantined'],
    [FLUID, { state: 'issued' }, {}, undefined],
  ];
  for (const [at, [of, over, need, code]] of cases.entries())
    expect(stop(of, over, need)?.[0], `case ${at}`).toBe(code);
});

// source: hand. The one to take instead is named out of the bottles of the shop.
it('names the bottle to use instead', () => {
  const other = { toolId: 'F-L04', state: 'in-crib', levelMl: 900, permittedMaterialIds: 'all' } as const;
  const days = { expiresOnDay: null, openedOnDay: null, openedLifeDays: null, chlorinated: 'no' } as const;
  const found = stop(FLUID, { levelMl: 0 }, { bottles: [{ ...other, ...days }] });
  expect(found?.[1]).toBe('T-1 is empty. Use F-L04 first.');
});

// source: hand. Due on the day the job is done, it lasts; a day before, it does not.
it('says when a gauge runs out before the job does', () => {
  const ring = (dueOnDay: string | null) => ({ id: 'G-1', role: 'go-ring', dueOnDay }) as const;
  expect(dueBeforeDone(ring('2026-03-06'), '2026-03-06')).toBeNull();
  expect(dueBeforeDone(ring(null), '2026-03-06')).toBeNull();
  expect(dueBeforeDone(ring('2026-03-05'), '2026-03-06')).toContain('before the job is done on 6 Mar 2026');
  expect(dueBeforeDone({ ...ring('2026-03-05'), role: 'die' }, '2026-03-06')).toBeNull();
});
