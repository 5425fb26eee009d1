import { describe, expect, it } from 'vitest';
import { fluidNeeds } from '@/lib/outlook/fluid-needs';
import { setParts, shopRecord, toolFacts } from '../../support/shop-record';

const part = setParts().find(({ role }) => role === 'fluid');
if (part === undefined) throw new Error('a complete set has a fluid');
/** 1 mL planned a day over the last half year. */
const rows = [{ onDay: '2026-02-01', materialId: '316-cw', drops: 182 * 40, fluidId: null }];
const bottle = (id: string, change = {}) =>
  toolFacts({ id, role: 'fluid', levelMl: 300, openedOnDay: '2026-02-01', ...change });
const record = (tools: ReturnType<typeof bottle>[], parts = setParts()) =>
  shopRecord({ tools, parts, lines: [], fluidLog: { levels: [], rows } });
const needOf = (...args: Parameters<typeof record>) => fluidNeeds(record(...args))[0];

describe('fluidNeeds', () => {
  // source: hand. At 1 mL planned × 3 (the factor) a day 300 mL last 100 days in the mean future: about 10 June, the median of a
  // right-skewed ratio a little later; the early tenth uses 4.4 × (SciPy, see use-ratio.test) and is short after 68 days.
  it('says when it runs short, early and in the middle, and orders in time', () => {
    const need = needOf([bottle('F-1')]);
    expect(need?.mlPerDay).toBeCloseTo(3, 9);
    expect(need?.shortOnDay.median).toBe('2026-06-18');
    expect(need?.shortOnDay.early).toBe('2026-05-09');
    expect(need?.endsBy).toBe('used-up');
    // Of a supplier with no order behind it nine in ten take half as long again as quoted (LEAD_TIME_PRIOR), and a day of receiving.
    const leadDays = Math.ceil(1.5 * (part.leadTimeDays ?? 0) - 1e-9);
    expect(need?.orderByDay).toBe(dayBefore(need?.shortOnDay.early ?? '', leadDays + 1));
  });

  // source: hand. 5 L at 3 mL a day last 55 months and keep 12 once opened: 1 L is used up in time (1 095 mL a year).
  it('Q7 of the newcomer’s list: a can too big for the shop, and the size that is used up in time', () => {
    const parts = setParts().map((one) => (one.role === 'fluid' ? { ...one, containerMl: 5000 } : one));
    const need = needOf([bottle('F-1', { levelMl: 5000 })], parts);
    expect(Math.floor(need?.containerMonths ?? 0)).toBe(55);
    expect(need?.smallerContainerMl).toBe(1000);
    expect(need?.endsBy).toBe('out-of-date');
    expect(need?.wasted.map(({ toolId }) => toolId)).toEqual(['F-1']);
    expect(need?.containers).toBe(1);
  });

  // source: hand. Open since 1 December 2024 with a year to keep: none of it may be used, so it is short today.
  it('counts nothing that is past its day', () => {
    const need = needOf([bottle('F-1', { openedOnDay: '2024-12-01' })]);
    expect(need?.usableMl).toBe(0);
    expect(need?.shortOnDay.early).toBe('2026-03-02');
  });

  // source: identity. More in stock never runs short earlier; the fan is ordered.
  it('is monotone in the stock, and its fan is ordered', () => {
    const small = needOf([bottle('F-1')]);
    const big = needOf([bottle('F-1'), bottle('F-2')]);
    expect((big?.shortOnDay.median ?? '9999') >= (small?.shortOnDay.median ?? '9999')).toBe(true);
    for (const { low, mid, high } of small?.fan ?? []) expect(low <= mid && mid <= high).toBe(true);
  });
});

function dayBefore(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) - days * 86_400_000).toISOString().slice(0, 10);
}
