import { expect, it } from 'vitest';
import type { KitTool } from '@/lib/kit/judge-custody';
import { judgeItem, type KitNeed } from '@/lib/kit/judge-item';
import type { KitScan } from '@/lib/kit/kit-stop';
import type { Part } from '@/lib/shop/part';
import { BLADE, DIE, FLUID, HIGH, MEDIUM, part, QUARTER, RING } from '../../support/db';
import { toolAfter } from '../../support/entry';

const NEED: KitNeed = {
  today: '2026-03-02',
  line: { id: 'J-7.1', dueOnDay: '2026-03-06' },
  connection: HIGH,
  fluidWork: { materialId: '316', titanium: false, duty: 'ordinary' },
  bottles: [],
  roles: ['die', 'go-ring', 'fluid', 'collet'],
  scannedIds: [],
  connections: [MEDIUM, HIGH, QUARTER],
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
const code = (scan: KitScan) => (scan.goes ? 'goes' : scan.code);

// source: hand. What stops a kit, and in which order of cost; stated in TRADE §3.1 and question 15.
it('Q15: a right-hand die in the left-hand slot stops the kit, whatever else it is', () => {
  const scan = judgeItem(tool(DIE, { hand: 'RH', state: 'quarantined' }), DIE, NEED);
  expect(scan).toEqual({
    goes: false,
    toolId: 'T-1',
    code: 'hand',
    sentence: 'T-1 is right hand; 9⁄16 high pressure is left hand.',
  });
  expect(code(judgeItem(tool(DIE, { hand: null }), DIE, NEED))).toBe('hand');
});

it('another size and the other pressure class are told apart', () => {
  const quarter = part({ id: 'q', role: 'collet', fitsConnectionIds: [QUARTER.id] });
  const medium = part({ id: 'm', role: 'collet', fitsConnectionIds: [MEDIUM.id] });
  expect(code(judgeItem(tool(quarter), quarter, NEED))).toBe('size');
  expect(code(judgeItem(tool(medium), medium, NEED))).toBe('pressure');
});

it('each thing in the way is named', () => {
  const at = (over: Partial<KitTool>, of = DIE) => code(judgeItem(tool(of, over), of, NEED));
  expect(at({})).toBe('goes');
  expect(at({ state: 'issued', holderName: 'Ash Moor' })).toBe('out');
  expect(at({ state: 'quarantined' })).toBe('quarantined');
  expect(at({ state: 'regrind' })).toBe('away');
  expect(at({ state: 'lost' })).toBe('gone');
  expect(at({ edgeEnded: true })).toBe('edge-ended');
  expect(at({ firstOffOwed: true })).toBe('first-off');
  expect(at({ reservation: { jobLineId: 'J-9.1', untilDay: '2026-03-02' } })).toBe('kept');
  expect(at({ reservation: { jobLineId: 'J-9.1', untilDay: '2026-03-01' } })).toBe('goes');
  expect(at({ reservation: { jobLineId: 'J-7.1', untilDay: '2026-03-09' } })).toBe('goes');
  expect(at({}, BLADE)).toBe('not-needed');
  expect(at({ dueOnDay: null }, RING)).toBe('calibration');
  expect(at({ dueOnDay: '2026-03-01' }, RING)).toBe('calibration');
  expect(at({ levelMl: 0 }, FLUID)).toBe('fluid-empty');
  expect(at({ expiresOnDay: '2026-03-01' }, FLUID)).toBe('fluid-date');
  expect(at({ expiresOnDay: '2026-03-02' }, FLUID)).toBe('goes');
  expect(code(judgeItem(tool(DIE), DIE, { ...NEED, scannedIds: ['T-1'] }))).toBe('scanned-twice');
  const other = { ...FLUID, permittedMaterialIds: ['2507'] };
  expect(code(judgeItem(tool(other), other, NEED))).toBe('fluid-not-permitted');
});

// source: hand. Stated: hand and size are asked first, then where it stands, then its edge, its calibration or its fluid.
it('of several things in the way, the costliest mistake is named', () => {
  const at = (over: Partial<KitTool>, of = DIE) => code(judgeItem(tool(of, over), of, NEED));
  const late = { dueOnDay: '2026-03-01' };
  expect(at({ ...late, hand: 'RH', state: 'issued' }, RING)).toBe('hand');
  expect(at({ ...late, state: 'calibration' }, RING)).toBe('away');
  expect(at({ ...late, state: 'lost' }, RING)).toBe('gone');
  expect(at({ levelMl: 0, state: 'quarantined' }, FLUID)).toBe('quarantined');
});

it('Q13: a gauge due before the job is done goes out, and says what stops on that day', () => {
  const scan = judgeItem(tool(RING, { dueOnDay: '2026-03-03' }), RING, NEED);
  expect(scan).toMatchObject({
    goes: true,
    mind: 'T-1 is due at the end of 3 Mar 2026, before the job is done on 6 Mar 2026: nothing can be accepted with it after that.',
  });
  expect(judgeItem(tool(RING, { dueOnDay: '2026-03-06' }), RING, NEED)).toMatchObject({ mind: null });
});
