import { describe, expect, it } from 'vitest';
import { type ConnectionTyped, connectionOfTyped } from '@/lib/shop/connection-input';

const TYPED: ConnectionTyped = {
  entryId: 'entry-0001',
  deviceAtMs: 1_700_000_000_000,
  size: '9/16',
  service: 'high',
  tpi: 18,
  hand: 'LH',
  threadClass: '2A',
  threadLength: '15/16',
  nose: '0.281',
  unit: 'in',
  coneAngleDeg: 59,
  notGoTurnsMax: null,
  confirmed: false,
  inUse: true,
};

describe('connectionOfTyped', () => {
  // source: hand. 15/16 in × 25.4 = 23.8125 mm; 0.281 × 25.4 = 7.1374 mm.
  it('keeps lengths in mm and the size as an exact fraction', () => {
    const row = connectionOfTyped(TYPED);
    if (!row.ok) throw new Error(row.refusal.sentence);
    expect(row.value).toMatchObject({ id: '9-16-high', odNum: 9, odDen: 16, threadLengthMm: 23.8125 });
    expect(row.value.noseMm).toBeCloseTo(7.1374, 10);
  });

  // source: identity. The same row in mm is the same row.
  it('takes the same row in millimetres', () => {
    const inMm = connectionOfTyped({ ...TYPED, unit: 'mm', threadLength: '23.8125', nose: '7.1374' });
    const inIn = connectionOfTyped(TYPED);
    if (!inMm.ok || !inIn.ok) throw new Error('both rows are good');
    expect(inMm.value.threadLengthMm).toBe(inIn.value.threadLengthMm);
    expect(inMm.value.noseMm).toBeCloseTo(inIn.value.noseMm, 12);
  });

  // source: hand.
  it.each([
    ['size', { size: 'nine' }],
    ['threadLength', { threadLength: '' }],
    ['threadLength', { threadLength: '40' }],
    ['nose', { nose: '-1' }],
    ['tpi', { tpi: 400 }],
    ['coneAngleDeg', { coneAngleDeg: 180 }],
    ['notGoTurnsMax', { notGoTurnsMax: 30 }],
  ] as const)('names the field %s when it is wrong', (field, change) => {
    const row = connectionOfTyped({ ...TYPED, ...change });
    expect(row.ok).toBe(false);
    if (!row.ok) expect(row.refusal.field).toBe(field);
  });
});
