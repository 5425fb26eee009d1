import { describe, expect, it } from 'vitest';
import { toolDisagreement } from '@/lib/import/compare-tool';
import type { ToolRow } from '@/lib/import/read-tool-row';
import { makeShopIndex } from '@/lib/import/shop-index';
import { BLADE, DIE, HIGH, MATERIALS, MEDIUM } from '@/tests/support/db';
import { toolRow } from '@/tests/support/import-rows';

const index = makeShopIndex({
  connections: [MEDIUM, HIGH],
  materials: MATERIALS,
  people: [],
  parts: [DIE, BLADE],
});
const moved = { dueOnDay: '2027-01-01', expiresOnDay: null, openedOnDay: null, levelMl: 40 };
const receipt = {
  ...{
    partId: DIE.id,
    role: 'die' as const,
    hand: 'LH' as const,
    lot: 'L1',
    receivedOnDay: '2026-01-05',
    expiresOnDay: null,
    openedOnDay: null,
  },
  ...{ dueOnDay: '2026-06-01', levelMl: 100, orderId: null },
  opening: { known: 'counted', connectionId: HIGH.id, materialId: '316', ends: 5, exposureMicro: 52_500_000 },
} as const;

function column(change: Partial<ToolRow>): string | undefined {
  return toolDisagreement(index, toolRow(change), { receipt, now: moved })?.field;
}

describe('toolDisagreement', () => {
  it('finds none where the row says the same, or nothing', () => {
    const size = { num: 9, den: 16 };
    expect(column({})).toBeUndefined();
    expect(
      column({
        role: 'die' as const,
        size,
        service: 'high',
        hand: 'LH' as const,
        lot: 'L1',
        receivedOnDay: '2026-01-05',
        opening: 5,
        openingMaterial: '316',
      }),
    ).toBeUndefined();
  });

  it('takes days and level as they were and as they are', () => {
    for (const dueOnDay of ['2026-06-01', '2027-01-01']) expect(column({ dueOnDay })).toBeUndefined();
    for (const levelMl of [100, 40]) expect(column({ levelMl })).toBeUndefined();
    expect(column({ state: 'scrapped', note: 'other' })).toBeUndefined();
  });

  it.each([
    [{ role: 'blade' }, 'kind'],
    [{ partId: 'blade-56' }, 'kind'],
    [{ hand: 'RH' }, 'hand'],
    [{ lot: 'L2' }, 'lot'],
    [{ receivedOnDay: '2026-01-06' }, 'received_on'],
    [{ dueOnDay: '2026-06-02' }, 'calibration_due'],
    [{ levelMl: 50 }, 'level_ml'],
    [{ opening: 'new' }, 'opening'],
    [{ opening: 6, size: { num: 9, den: 16 }, service: 'high', openingMaterial: '316' }, 'opening'],
  ] as [Partial<ToolRow>, string][])('finds %j', (change, at) => {
    expect(column(change)).toBe(at);
  });
});
