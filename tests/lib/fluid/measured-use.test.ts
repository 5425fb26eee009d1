import { describe, expect, it } from 'vitest';
import type { FluidLog } from '@/lib/fluid/fluid-log';
import { dropsPerDay, measuredUses, type PastBottle } from '@/lib/fluid/measured-use';

const bottle = (toolId: string, change: Partial<PastBottle> = {}): PastBottle => ({
  ...{ toolId, openedOnDay: '2026-01-01', endedOnDay: null, dropsPerMl: 40, permits: () => true },
  ...change,
});
const row = (onDay: string, drops: number, fluidId: string | null = null, materialId = '316') => ({
  ...{ onDay, drops, fluidId, materialId },
});
const levels = [
  { toolId: 'A', onDay: '2026-01-01', levelMl: 1000 },
  { toolId: 'A', onDay: '2026-01-21', levelMl: 700 },
  { toolId: 'A', onDay: '2026-01-31', levelMl: 400 },
];

describe('measuredUses', () => {
  // source: hand. 600 mL gone; 4000 + 2000 drops at 40 to the mL are 150 mL. The row on the last day does not count.
  it('sets what left the bottle beside what was planned meanwhile', () => {
    const log: FluidLog = {
      levels,
      rows: [row('2026-01-01', 4000), row('2026-01-25', 2000), row('2026-01-31', 9000)],
    };
    expect(measuredUses(log, [bottle('A')])).toEqual([
      { toolId: 'A', fromDay: '2026-01-01', toDay: '2026-01-31', measuredMl: 600, plannedMl: 150 },
    ]);
  });

  // source: hand. A fell by 600 in 30 days, B by 200 in the same: of a row that names none, A is laid 3 parts, B 1.
  it('shares a row that names no bottle by how fast each fell, and gives a named row to its own', () => {
    const both = [
      ...levels,
      { toolId: 'B', onDay: '2026-01-01', levelMl: 500 },
      { toolId: 'B', onDay: '2026-01-31', levelMl: 300 },
    ];
    const log = { levels: both, rows: [row('2026-01-10', 4000), row('2026-01-11', 400, 'B')] };
    const planned = Object.fromEntries(
      measuredUses(log, [bottle('A'), bottle('B')]).map(({ toolId, plannedMl }) => [toolId, plannedMl]),
    );
    expect(planned.A).toBeCloseTo(75, 12);
    expect(planned.B).toBeCloseTo(25 + 10, 12);
  });

  // source: identity. Sharing loses nothing: what is laid at all bottles is what the rows planned.
  it('shares without loss', () => {
    const many = ['A', 'B', 'C'].flatMap((toolId, i) => [
      { toolId, onDay: '2026-01-01', levelMl: 1000 },
      { toolId, onDay: '2026-02-01', levelMl: 900 - 100 * i },
    ]);
    const rows = [row('2026-01-05', 1234), row('2026-01-20', 777)];
    const total = measuredUses(
      { levels: many, rows },
      ['A', 'B', 'C'].map((id) => bottle(id)),
    )
      .map(({ plannedMl }) => plannedMl)
      .reduce((a, b) => a + b, 0);
    expect(total).toBeCloseTo((1234 + 777) / 40, 9);
  });

  // source: hand. Each of these tells nothing of the ratio.
  it('learns nothing from one level, a rise, a bottle closed, ended or not permitted', () => {
    const log = { levels, rows: [row('2026-01-10', 4000)] };
    expect(measuredUses({ ...log, levels: levels.slice(0, 1) }, [bottle('A')])).toEqual([]);
    expect(
      measuredUses({ ...log, levels: [...levels, { toolId: 'A', onDay: '2026-02-01', levelMl: 1100 }] }, [
        bottle('A'),
      ]),
    ).toEqual([]);
    for (const change of [{ openedOnDay: null }, { endedOnDay: '2026-01-05' }, { permits: () => false }])
      expect(measuredUses(log, [bottle('A', change)])).toEqual([]);
  });
});

// source: hand. 300 drops in the ten days before today; today itself and what is older do not count.
it('dropsPerDay: the pace over so many days before today', () => {
  const rows = [
    row('2026-03-01', 100),
    row('2026-02-20', 200),
    row('2026-03-02', 999),
    row('2026-02-19', 999),
  ];
  expect(dropsPerDay(rows, '2026-03-02', 10)).toBe(30);
});
