import { expect, it } from 'vitest';
import { edgeGroups } from '@/lib/outlook/edge-groups';
import { setParts } from '../../support/shop-record';
import { logBook } from '../../support/tool-log';

const parts = setParts().map((part) => ({ ...part, supplier: part.role === 'die' ? 'Maker A' : '' }));

// source: hand. 10.5 turns an end; what was not written down is no group.
it('groups an edge by its lot, its supplier and what it cut of each heat', () => {
  const book = logBook();
  book.receive('D-1', 'die', { lot: 'L7' });
  book.cut('D-1', 20, { heat: 'H2' });
  book.cut('D-1', 30, { heat: 'H1' });
  book.cut('D-1', 2, { heat: 'H2', dry: true });
  book.receive('B-1', 'blade');
  book.cut('B-1', 9, { heat: '' });
  const [die, blade] = edgeGroups(book.logs(), parts);
  expect(die).toMatchObject({
    toolId: 'D-1',
    edgeNo: 1,
    lot: 'L7',
    supplier: 'Maker A',
    ends: 52,
    lastHeat: 'H2',
  });
  expect(die?.heats.map(({ heat, ends }) => [heat, ends])).toEqual([
    ['H1', 30],
    ['H2', 22],
  ]);
  expect(die?.heats[1]?.parts).toEqual([
    { materialId: '316-cw', dry: false, rework: false, base: 210 },
    { materialId: '316-cw', dry: true, rework: false, base: 21 },
  ]);
  expect(blade).toEqual({
    ...{ toolId: 'B-1', edgeNo: 1, lot: undefined, supplier: undefined, ends: 9, heats: [], lastHeat: '' },
    ...{ fluidLot: undefined, fluidProduct: undefined },
  });
});

// source: hand. A reground edge is of the same lot and cuts its own heats.
it('counts the heats of each edge apart', () => {
  const book = logBook();
  book.receive('B-1', 'blade', { lot: 'B9' });
  book.cut('B-1', 9, { heat: 'H1' });
  book.add('edge-renewed', 'B-1', { onDay: '2026-03-02' });
  book.cut('B-1', 7, { heat: 'H2' });
  const groups = edgeGroups(book.logs(), parts);
  expect(groups.map(({ edgeNo, lot, ends, lastHeat }) => [edgeNo, lot, ends, lastHeat])).toEqual([
    [1, 'B9', 9, 'H1'],
    [2, 'B9', 7, 'H2'],
  ]);
});

// source: hand. 30 of 52 ends with lot F1 are more than half; 26 of 52 are not; both bottles hold the same oil.
it('an edge belongs to the fluid that cut more than half of its exposure, or to none', () => {
  const bottles = [
    { id: 'F-1', lot: 'F1', product: 'Oil A' },
    { id: 'F-2', lot: 'F2', product: 'Oil A' },
  ];
  const cutWith = (...rows: [ends: number, fluidId: string | null][]) => {
    const book = logBook();
    book.receive('D-1', 'die');
    for (const [ends, fluidId] of rows) book.cut('D-1', ends, { fluidId });
    const [edge] = edgeGroups(book.logs(), parts, bottles);
    return [edge?.fluidLot, edge?.fluidProduct];
  };
  expect(cutWith([30, 'F-1'], [22, 'F-2'])).toEqual(['F1', 'Oil A']);
  expect(cutWith([26, 'F-1'], [26, 'F-2'])).toEqual([undefined, 'Oil A']);
  expect(cutWith([20, 'F-1'], [32, null])).toEqual([undefined, undefined]);
  expect(cutWith([20, 'F-9'])).toEqual([undefined, undefined]);
});
