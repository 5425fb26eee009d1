import { expect, it } from 'vitest';
import type { KitTool } from '@/lib/kit/judge-custody';
import { type KitStock, proposeKit } from '@/lib/kit/propose-kit';
import type { Part } from '@/lib/shop/part';
import { DIE, FLUID, HIGH, MEDIUM, QUARTER, RING } from '../../support/db';
import { toolAfter } from '../../support/entry';

const NEED = {
  today: '2026-03-02',
  line: { id: 'J-7.1', materialId: '316', dueOnDay: '2026-03-06' },
  connection: HIGH,
  materialName: '316',
  operations: ['thread'],
  connections: [MEDIUM, HIGH, QUARTER],
} as const;
const stock = (of: Part, id: string, over: Partial<KitTool> = {}): KitStock => ({
  part: of,
  tool: {
    ...toolAfter(of.role),
    ...{ id, partId: of.id, hand: of.hand, holderName: null, edgeEnded: false },
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
