import { describe, expect, it } from 'vitest';
import { gaugeCosts } from '@/lib/end-costs/gauge-costs';
import type { Role } from '@/lib/shop/vocabulary';

const gauge = (toolId: string, role: Role, fitsConnectionIds: string[], calibrations: number) => ({
  ...{ toolId, role, fitsConnectionIds, calibrations },
});
const accepted = new Map([
  ['S', 100],
  ['T', 300],
]);

describe('what calibrations add to an accepted end', () => {
  // source: hand. A ring calibrated twice at 8 000, 100 ends of S and 100 of T accepted with it: 8 000 to each size, 80 an end of S, 26.67 of T.
  it('spreads a gauge over the ends accepted with it', () => {
    const looks = [
      { toolId: 'G', connectionId: 'S', ends: 100 },
      { toolId: 'G', connectionId: 'T', ends: 100 },
    ];
    const each = gaugeCosts({ calibrations: [gauge('G', 'go-ring', ['S', 'T'], 2)], looks, accepted }, 8_000);
    expect(each('S', 'die')).toBeCloseTo(80, 9);
    expect(each('T', 'die')).toBeCloseTo(8_000 / 300, 9);
    expect(each('S', 'blade')).toBe(0);
  });

  // source: hand. A master of both sizes at 8 000 over 400 ends: 20 an end; a cone gauge of S, on the shelf: 80; one for a size of which
  // nothing was accepted, and a torque wrench: nothing.
  it('spreads masters and twins over all ends of their sizes', () => {
    const calibrations = [
      gauge('SP', 'setting-plug', [], 1),
      gauge('CG', 'cone-gauge', ['S'], 1),
      gauge('U', 'go-ring', ['U'], 3),
      gauge('TW', 'torque-wrench', [], 3),
    ];
    const each = gaugeCosts({ calibrations, looks: [], accepted }, 8_000);
    expect([each('S', 'die'), each('T', 'die'), each('S', 'blade')]).toEqual([20, 20, 80]);
    expect([each('T', 'blade'), each('U', 'die')]).toEqual([0, 0]);
  });

  // source: identity. What is spread comes to what was paid, wherever ends were accepted.
  it('adds up to what was paid', () => {
    const calibrations = [
      gauge('A', 'go-ring', ['S'], 2),
      gauge('B', 'not-go-ring', ['S', 'T'], 1),
      gauge('C', 'cone-gauge', [], 4),
    ];
    const looks = [
      { toolId: 'A', connectionId: 'S', ends: 70 },
      { toolId: 'B', connectionId: 'S', ends: 30 },
      { toolId: 'B', connectionId: 'T', ends: 210 },
    ];
    const each = gaugeCosts({ calibrations, looks, accepted }, 5_000);
    const paid = [...accepted].reduce(
      (sum, [id, ends]) => sum + ends * (each(id, 'die') + each(id, 'blade')),
      0,
    );
    expect(paid).toBeCloseTo(7 * 5_000, 6);
  });
});
