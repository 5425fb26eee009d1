import { describe, expect, it } from 'vitest';
import type { ToolRow } from '@/lib/import/read-tool-row';
import { resolveOpening, resolveTool } from '@/lib/import/resolve-tool';
import { makeShopIndex } from '@/lib/import/shop-index';
import { BODY, DIE, HIGH, MATERIALS, MEDIUM, part, QUARTER } from '@/tests/support/db';
import { toolRow } from '@/tests/support/import-rows';

const mediumDie = part({ id: 'die-medium', role: 'die', hand: 'LH', fitsConnectionIds: [MEDIUM.id] });
const index = makeShopIndex({
  connections: [MEDIUM, HIGH, QUARTER],
  materials: MATERIALS,
  people: [],
  parts: [DIE, BODY, mediumDie],
});
const die = toolRow({ partId: 'die-56', hand: 'LH', size: { num: 9, den: 16 }, service: 'high' });

describe('resolveTool', () => {
  it('fills in the day of the import and an unknown past', () => {
    const receipt = resolveTool(index, die, '2026-03-02');
    expect(receipt).toMatchObject({
      ok: true,
      value: {
        toolId: 'T-01',
        partId: 'die-56',
        receivedOnDay: '2026-03-02',
        opening: { known: 'unknown' },
        orderId: null,
      },
    });
  });

  it('never fills in a hand', () => {
    const receipt = resolveTool(index, { ...die, hand: null }, '2026-03-02');
    expect(!receipt.ok && receipt.refusal).toMatchObject({ code: 'hand', field: 'hand' });
    expect(resolveTool(index, toolRow({ partId: 'body' }), '2026-03-02')).toMatchObject({
      ok: true,
      value: { opening: { known: 'new' } },
    });
  });
});

describe('resolveOpening', () => {
  const opening = (change: Partial<ToolRow>, of = DIE) => {
    const result = resolveOpening(index, { ...die, ...change }, of);
    return result.ok ? result.value : result.refusal.field;
  };

  it('needs to know in what its ends were cut', () => {
    expect(opening({ opening: 34, openingMaterial: '2507' })).toEqual({
      known: 'counted',
      connectionId: HIGH.id,
      materialId: '2507',
      ends: 34,
    });
    expect(opening({ opening: 34, openingMaterial: '2507', openingService: 'medium' })).toMatchObject({
      connectionId: MEDIUM.id,
    });
    expect(opening({ opening: 34 })).toBe('opening_material');
    expect(opening({ opening: 34, service: null, openingMaterial: '316' })).toBe('opening_service');
    expect(opening({ opening: 34, openingMaterial: 'inox' })).toBe('opening_material');
    expect(opening({ opening: 34, openingMaterial: '316' }, mediumDie)).toBe('opening_service');
    expect(opening({ opening: 34, openingMaterial: '316' }, BODY)).toBe('opening');
    expect(opening({ opening: 'new' })).toEqual({ known: 'new' });
  });
});
