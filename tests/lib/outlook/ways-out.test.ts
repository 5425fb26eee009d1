import { expect, it } from 'vitest';
import { type WayOut, waysOut } from '@/lib/outlook/ways-out';
import { blocker, lineFacts, orderFacts, setParts, shopRecord } from '../../support/shop-record';

const kinds = (ways: readonly WayOut[]) => ways.map(({ kind }) => kind);
const line = lineFacts();
const die = setParts().find(({ role }) => role === 'die');

// source: hand. Each case states what is in the way and what a person at the counter could do about it.
it('a missing die can be ordered or received, or the dates changed', () => {
  const ways = waysOut(blocker({}), line, shopRecord());
  expect(kinds(ways)).toEqual(['place-order', 'receive', 'change-dates']);
  expect(ways[0]).toMatchObject({ part: { role: 'die', hand: 'LH' } });
});

it('what is on order already leads to its order first, and says when it is late', () => {
  const order = orderFacts({ id: 'PO-1', partId: die?.id ?? '' });
  const coming = waysOut(blocker({}), line, shopRecord({ orders: [order] }));
  expect(kinds(coming)).toEqual(['see-order', 'receive', 'place-order', 'change-dates']);
  expect(coming.slice(0, 2)).toMatchObject([{ late: false }, { orderId: 'PO-1' }]);
  const late = waysOut(
    blocker({}),
    line,
    shopRecord({ orders: [{ ...order, expectedOnDay: '2026-03-01' }] }),
  );
  expect(late[0]).toMatchObject({ kind: 'see-order', late: true });
});

it('never offers a right-hand die for a left-hand thread', () => {
  const parts = setParts().map((part) => (part.role === 'die' ? { ...part, hand: 'RH' as const } : part));
  expect(kinds(waysOut(blocker({}), line, shopRecord({ parts })))).toEqual(['add-part', 'change-dates']);
});

it('a size without a table row asks for the row first and invents no part', () => {
  const other = lineFacts({ connectionId: '1-high' });
  expect(waysOut(blocker({ kind: 'unknown-connection', role: null }), other, shopRecord())).toEqual([
    { kind: 'add-size', connectionId: '1-high' },
  ]);
  expect(kinds(waysOut(blocker({}), other, shopRecord()))).toEqual(['change-dates']);
  expect(kinds(waysOut(blocker({ kind: 'unknown-material', role: null }), line, shopRecord()))).toEqual([
    'add-material',
  ]);
});

it('what stands somewhere leads to the tool; what another line has leads to the dates', () => {
  const ring = { role: 'go-ring', toolIds: ['G-1'] } as const;
  for (const kind of ['quarantined', 'calibration-lapses', 'needs-first-off', 'hand-mismatch'] as const)
    expect(waysOut(blocker({ ...ring, kind }), line, shopRecord())[0], kind).toEqual({
      kind: 'see-tool',
      toolId: 'G-1',
    });
  const held = (lineId: string | null) =>
    kinds(waysOut(blocker({ ...ring, kind: 'held-elsewhere', lineId }), line, shopRecord()))[0];
  expect([held('J-2.1'), held(null)]).toEqual(['change-dates', 'see-tool']);
});

it('offers only fluid that is permitted on the material, whatever its sizes', () => {
  const short = blocker({ kind: 'fluid-short', role: 'fluid', toolIds: ['F-1'] });
  expect(kinds(waysOut(short, line, shopRecord()))).toEqual([
    'place-order',
    'receive',
    'see-tool',
    'change-dates',
  ]);
  const titanium = lineFacts({ materialId: 'ti-2' });
  const parts = setParts().map((part) =>
    part.role === 'fluid' ? { ...part, permittedMaterialIds: ['316-cw'] } : part,
  );
  const barred = blocker({ kind: 'fluid-not-permitted', role: 'fluid' });
  expect(kinds(waysOut(barred, titanium, shopRecord({ parts })))).toEqual(['add-part', 'change-dates']);
});

it('edges that will not last lead to one more, then to those in use', () => {
  const short = blocker({ kind: 'life-short', hard: false, toolIds: ['D-1', 'D-2', 'D-3'] });
  expect(kinds(waysOut(short, line, shopRecord()))).toEqual([
    'place-order',
    'receive',
    'see-tool',
    'see-tool',
    'change-dates',
  ]);
});
