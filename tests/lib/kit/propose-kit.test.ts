import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bottleOfTool } from '@/lib/fluid/bottle-of-tool';
import { pickFirst } from '@/lib/fluid/pick-first';
import type { KitTool } from '@/lib/kit/judge-custody';
import { type KitStock, proposeKit } from '@/lib/kit/propose-kit';
import type { Part } from '@/lib/shop/part';
import { DIE, FLUID, HIGH, MEDIUM, QUARTER, RING } from '../../support/db';
import { toolAfter } from '../../support/entry';

const NEED = {
  today: '2026-03-02',
  line: { id: 'J-7.1', dueOnDay: '2026-03-06' },
  connection: HIGH,
  fluidWork: { materialId: '316', titanium: false, duty: 'ordinary' },
  bottles: [],
  operations: ['thread'],
  connections: [MEDIUM, HIGH, QUARTER],
} as const;
const stock = (of: Part, id: string, over: Partial<KitTool> = {}): KitStock => ({
  part: of,
  tool: {
    ...toolAfter(of.role),
    ...{
      id,
      partId: of.id,
      hand: of.hand,
      holderName: null,
      edgeEnded: false,
      endsUsedUp: false,
      lotChlorinated: null,
    },
    ...over,
  },
});
const ring = (id: string, dueOnDay: string | null, over: Partial<KitTool> = {}) =>
  stock(RING, id, { dueOnDay, ...over });
const of = (role: string, kit: ReturnType<typeof proposeKit>) => kit.find((item) => item.role === role);

// source: hand. The rules that the crib works by: TRADE §3.1 and §1.4.
it('asks for each need of the complete set once, in bench order', () => {
  const kit = proposeKit(NEED, []);
  expect(kit.map(({ role }) => role)).toEqual([
    ...['collet', 'die-stock', 'threading-guide', 'die', 'deburr-tool', 'brush', 'fluid'],
    ...['go-ring', 'not-go-ring', 'length-gauge'],
  ]);
  expect(kit.every(({ toolId, why }) => toolId === null && why === 'none')).toBe(true);
});

it('of gauges, the one due soonest that still lasts the job, and those due earlier last', () => {
  const kit = proposeKit(NEED, [
    ring('G-1', '2026-12-31'),
    ring('G-2', '2026-03-04'),
    ring('G-3', '2026-03-06'),
    ring('G-4', '2026-03-01'),
  ]);
  expect(of('go-ring', kit)).toMatchObject({ toolId: 'G-3', why: 'soonest-due', otherIds: ['G-1', 'G-2'] });
  expect(of('go-ring', kit)?.stopped).toMatchObject([{ toolId: 'G-4', code: 'calibration' }]);
});

it('of fluids, first expired first out, an opened bottle before a closed one of its day', () => {
  const kit = proposeKit(NEED, [
    stock(FLUID, 'F-1', { expiresOnDay: '2026-09-01', levelMl: 100 }),
    stock(FLUID, 'F-2', { expiresOnDay: '2026-06-01', levelMl: 100 }),
    stock(FLUID, 'F-3', { expiresOnDay: '2026-06-01', levelMl: 100, openedOnDay: '2026-02-01' }),
  ]);
  expect(of('fluid', kit)).toMatchObject({ toolId: 'F-3', why: 'first-expired', otherIds: ['F-2', 'F-1'] });
});

// source: published. First expired, first out, an extension counted: DoDM 4140.27; for oxygen the label alone (stated).
it('Q8: of fluids, an extended life counts as extended, and for oxygen as labelled', () => {
  const oil = { ...FLUID, permittedDuties: ['ordinary', 'oxygen'] } satisfies Part;
  const bottles = [
    stock(oil, 'F-1', { expiresOnDay: '2026-02-01', extendedUntilDay: '2026-08-01', levelMl: 100 }),
    stock(oil, 'F-2', { expiresOnDay: '2026-06-01', levelMl: 100 }),
  ];
  expect(of('fluid', proposeKit(NEED, bottles))).toMatchObject({ toolId: 'F-2', otherIds: ['F-1'] });
  const oxygen = { ...NEED, fluidWork: { ...NEED.fluidWork, duty: 'oxygen' } } as const;
  const kit = of('fluid', proposeKit(oxygen, bottles));
  expect(kit).toMatchObject({
    toolId: 'F-2',
    why: 'only-one',
    stopped: [{ toolId: 'F-1', code: 'fluid-date' }],
  });
});

// source: identity. What the proposal offers, in order, is first expired, first out over what lies in the crib.
it('of fluids, offers what first expired, first out picks, in its order', () => {
  const bottle = fc.record({
    expiresOnDay: fc.constantFrom(null, '2026-03-01', '2026-03-02', '2026-09-01'),
    extendedUntilDay: fc.constantFrom(null, '2026-12-01'),
    openedOnDay: fc.constantFrom(null, '2026-01-05'),
    levelMl: fc.constantFrom(null, 0, 80, 900),
    lotChlorinated: fc.constantFrom(null, 'yes' as const, 'no' as const, 'unknown' as const),
    state: fc.constantFrom('in-crib' as const, 'issued' as const, 'quarantined' as const),
  });
  const work = fc.record({
    materialId: fc.constantFrom('316', 'ti-2'),
    titanium: fc.boolean(),
    duty: fc.constantFrom('ordinary' as const, 'oxygen' as const),
  });
  const parts: readonly Part[] = [
    { ...FLUID, openedLifeDays: 60, permittedDuties: ['ordinary', 'oxygen'], chlorinated: 'no' },
    { ...FLUID, id: 'oil-2', permittedMaterialIds: ['316'] },
  ];
  const cases = fc.array(fc.record({ over: bottle, of: fc.constantFrom(...parts) }), { maxLength: 6 });
  fc.assert(
    fc.property(cases, work, (drawn, fluidWork) => {
      const stocks = drawn.map(({ of: part, over }, at) => stock(part, `F-${at}`, over));
      const fluid = of('fluid', proposeKit({ ...NEED, fluidWork }, stocks));
      const free = stocks.filter(({ tool }) => tool.state === 'in-crib');
      const picked = pickFirst(
        free.map(({ tool, part }) => bottleOfTool(tool, part)),
        fluidWork,
        NEED.today,
      );
      const offered = fluid?.toolId == null ? [] : [fluid.toolId, ...fluid.otherIds];
      expect(offered).toEqual(picked.map(({ bottle: { toolId } }) => toolId));
    }),
  );
});

it('of dies, the one that the week’s issue order chose; one kept for the line comes before it', () => {
  const dies = [stock(DIE, 'D-1'), stock(DIE, 'D-2')];
  expect(of('die', proposeKit(NEED, dies, { die: 'D-2' }))).toMatchObject({
    ...{ toolId: 'D-2', why: 'issue-order', otherIds: ['D-1'] },
  });
  expect(of('die', proposeKit(NEED, dies))).toMatchObject({ toolId: 'D-1', why: 'first-free' });
  const kept = stock(DIE, 'D-3', { reservation: { jobLineId: 'J-7.1', untilDay: '2026-03-06' } });
  expect(of('die', proposeKit(NEED, [...dies, kept], { die: 'D-2' }))).toMatchObject({
    ...{ toolId: 'D-3', why: 'kept-for-it' },
  });
  expect(of('die', proposeKit(NEED, [dies[0] as KitStock]))).toMatchObject({ why: 'only-one' });
});

it('what is already with the line does not go out again', () => {
  const out = stock(DIE, 'D-9', { state: 'issued', jobLineId: 'J-7.1', holderId: 'ash' });
  expect(of('die', proposeKit(NEED, [stock(DIE, 'D-1'), out]))).toMatchObject({
    ...{ toolId: 'D-9', why: 'with-the-line' },
  });
});

// source: hand. A ring out of calibration at the bench accepts nothing: another has to go out.
it('what is with the line and must not be used there is replaced', () => {
  const out = { state: 'issued', jobLineId: 'J-7.1', holderId: 'ash' } as const;
  const late = ring('G-9', '2026-03-01', out);
  expect(of('go-ring', proposeKit(NEED, [late, ring('G-1', '2026-12-31')]))).toMatchObject({
    ...{ toolId: 'G-1', why: 'only-one', stopped: [{ toolId: 'G-9', code: 'out' }] },
  });
  expect(of('go-ring', proposeKit(NEED, [ring('G-8', '2026-03-04', out)]))).toMatchObject({
    ...{ toolId: 'G-8', why: 'with-the-line', mind: expect.stringContaining('before the job is done') },
  });
});
