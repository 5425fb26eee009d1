import { expect, it } from 'vitest';
import type { EdgeHistory } from '@/lib/life/observation';
import type { EdgeGroups } from '@/lib/outlook/edge-groups';
import { groupedEdges } from '@/lib/outlook/grouped-edges';

const part = (base: number) => ({ materialId: '316-cw', dry: false, rework: false, base });
const about = { kind: 'die', partId: 'die-3-8', odIn: 0.375, regrinds: 0, edgeNo: 1 } as const;

/** Worn out in its last row, of heat H2: 300 turns of H1, 200 of H2, the last 10 in doubt. */
const worn: EdgeHistory = { ...about, toolId: 'D-1', before: [part(490)], during: [part(10)], end: 'worn' };
const cutting: EdgeHistory = { ...about, toolId: 'D-2', before: [part(100)], during: [], end: 'in-service' };
const unused: EdgeHistory = { ...about, toolId: 'D-3', before: [], during: [], end: 'in-service' };

const NO_FLUID = { fluidLot: undefined, fluidProduct: undefined };
const groups: EdgeGroups[] = [
  {
    ...{ toolId: 'D-1', edgeNo: 1, lot: 'L1', supplier: 'A', ends: 48, lastHeat: 'H2' },
    ...{ fluidLot: 'F1', fluidProduct: 'Oil A' },
    heats: [
      { heat: 'H1', ends: 29, parts: [part(300)] },
      { heat: 'H2', ends: 19, parts: [part(195), part(5)] },
    ],
  },
  {
    toolId: 'D-2',
    edgeNo: 1,
    lot: 'L1',
    supplier: undefined,
    ends: 10,
    heats: [],
    lastHeat: '',
    ...NO_FLUID,
  },
  { toolId: 'D-3', edgeNo: 1, lot: 'L1', supplier: 'A', ends: 0, heats: [], lastHeat: '', ...NO_FLUID },
];
const histories = [worn, cutting, unused];

// source: hand. Both used edges are of the lot, one is of a supplier; the unused one says nothing.
it('an edge belongs to its lot and its supplier whole', () => {
  expect(groupedEdges(histories, groups, 'lot')).toEqual(
    new Map([
      [
        'L1',
        [
          { history: worn, ends: 48 },
          { history: cutting, ends: 10 },
        ],
      ],
    ]),
  );
  expect([...groupedEdges(histories, groups, 'supplier').keys()]).toEqual(['A']);
});

// source: hand. Of 200 turns of H2 the last 10 are in doubt: 190 before; H1 has nothing in doubt. The sums are the history's.
it('an edge belongs to a heat with what it cut of it', () => {
  const heats = groupedEdges(histories, groups, 'heat');
  const [first] = heats.get('H1') ?? [];
  const [second] = heats.get('H2') ?? [];
  expect(first).toEqual({ history: worn, ends: 29, within: { before: [part(300)], during: [] } });
  expect(second?.within?.during).toEqual([part(10)]);
  expect(second?.within?.before.reduce((sum, { base }) => sum + base, 0)).toBe(190);
});

// source: hand. Whole to the fluid that cut most of it; one that no fluid can claim is in no group.
it('an edge belongs whole to the fluid that cut most of it', () => {
  expect(groupedEdges(histories, groups, 'fluid-lot')).toEqual(
    new Map([['F1', [{ history: worn, ends: 48 }]]]),
  );
  expect([...groupedEdges(histories, groups, 'fluid-product').keys()]).toEqual(['Oil A']);
});
