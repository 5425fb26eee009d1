import { describe, expect, it } from 'vitest';
import { noonMs, resolveCut, saysTheSame } from '@/lib/import/resolve-cut';
import { makeShopIndex } from '@/lib/import/shop-index';
import { DIE, HIGH, MATERIALS, MEDIUM } from '@/tests/support/db';
import { cutRow } from '@/tests/support/import-rows';

const index = makeShopIndex({ connections: [MEDIUM, HIGH], materials: MATERIALS, people: [], parts: [DIE] });
const noLine = () => undefined;

function facts(row = cutRow(), jobLineOf: Parameters<typeof resolveCut>[2] = noLine) {
  const resolved = resolveCut(index, row, jobLineOf);
  if (!resolved.ok) throw new Error(resolved.refusal.sentence);
  return resolved.value;
}

describe('resolveCut', () => {
  it('finds the connection and the material and puts the moment at noon of its day', () => {
    expect(facts()).toMatchObject({
      connectionId: HIGH.id,
      materialId: '316',
      jobLineId: null,
      cutAtMs: Date.UTC(2026, 1, 10, 12),
    });
  });

  it('names the bottle where the row does', () => {
    expect(facts().fluidId).toBeNull();
    expect(facts(cutRow({ fluid: 'F-L05' })).fluidId).toBe('F-L05');
  });

  it('names the job line where it is known and keeps what was written where it is not', () => {
    expect(facts(cutRow({ job: 'J-1' }), () => 'J-1.2').jobLineId).toBe('J-1.2');
    expect(facts(cutRow({ job: 'J-1' })).jobLineId).toBe('J-1');
  });

  it('refuses what the shop has no row for', () => {
    expect(resolveCut(index, cutRow({ size: { num: 1, den: 1 } }), noLine)).toMatchObject({
      refusal: { field: 'size' },
    });
    expect(resolveCut(index, cutRow({ material: 'inox' }), noLine)).toMatchObject({
      refusal: { field: 'material' },
    });
  });
});

// source: other-software. Date.UTC of the language, an independent calendar.
it('noonMs is noon UTC', () => {
  for (const [y, m, d] of [
    [1990, 1, 1],
    [2024, 2, 29],
    [2199, 12, 31],
  ] as const)
    expect(noonMs(`${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`)).toBe(
      Date.UTC(y, m - 1, d, 12),
    );
});

describe('saysTheSame', () => {
  const row = cutRow({ job: 'J-1', rejects: [{ cause: 'length', count: 1 }], goodEnds: 9 });
  const kept = {
    ...facts(row),
    operation: 'thread' as const,
    threadLengthMm: null,
    threadLengthTyped: '',
    exposureMicro: 1,
    correctsId: null,
    cutAtMs: Date.UTC(2026, 1, 10, 23, 59),
    jobLineId: 'J-1.2' as string | null,
  };

  it('compares by the day, and a job by its lines', () => {
    expect(saysTheSame(kept, facts(row), row)).toBe(true);
    expect(saysTheSame({ ...kept, jobLineId: 'J-10.2' }, facts(row), row)).toBe(false);
    expect(saysTheSame({ ...kept, jobLineId: null }, facts(row), row)).toBe(false);
  });

  it('finds every difference in what was cut', () => {
    for (const change of [
      { ends: 11 },
      { goodEnds: 8 },
      { heat: 'x' },
      { dry: true },
      { rework: true },
      { fluid: 'F-L05' },
      { cutOnDay: '2026-02-11' },
      { rejects: [] },
      { threadLength: { typed: '12', unit: 'mm' as const, lengthMm: 12 } },
    ]) {
      const other = { ...row, ...change };
      expect(saysTheSame(kept, facts(other), other), JSON.stringify(change)).toBe(false);
    }
  });
});
