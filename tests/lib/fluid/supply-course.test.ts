import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOfCourse, type FluidDemand, type SupplyBottle, supplyCourses } from '@/lib/fluid/supply-course';

const TODAY = '2026-03-01';
const steel = { materialId: '316', titanium: false, duty: 'ordinary' } as const;
const bottle = (toolId: string, change: Partial<SupplyBottle> = {}): SupplyBottle => ({
  ...{ toolId, partId: 'oil', fromDay: TODAY, state: 'in-crib', levelMl: 100, expiresOnDay: null },
  ...{ openedOnDay: TODAY, openedLifeDays: null, permittedMaterialIds: 'all', chlorinated: 'no' },
  ...change,
});
const demand = (change: Partial<FluidDemand> = {}): FluidDemand => ({
  ...{ work: steel, fromDay: TODAY, toDay: '2026-12-31', plannedMlPerDay: 5 },
  ...change,
});
const walk = (bottles: SupplyBottle[], demands: FluidDemand[], ratios = [2], horizonDays = 60) =>
  supplyCourses({ today: TODAY, horizonDays, bottles, demands, ratios }, () => 'oil');

describe('supplyCourses', () => {
  // source: hand. 100 mL at 5 × 2 a day: 90 after day 0, nothing after day 9, short from day 10.
  it('draws planned times ratio a day until nothing is left', () => {
    const [course] = walk([bottle('A')], [demand()]);
    expect(course?.levelMl.get('oil')?.[0]).toBeCloseTo(90, 9);
    expect(course?.levelMl.get('oil')?.[9]).toBeCloseTo(0, 9);
    expect(course?.shortFromDay.get('oil')).toBe(10);
    expect(dayOfCourse(TODAY, 10)).toBe('2026-03-11');
    expect(dayOfCourse(TODAY, Infinity)).toBeNull();
  });

  // source: hand. OLD ends on 3 March with 100 − 3 × 10 = 70 mL in it; NEW then serves ten days, to 13 March (day 12).
  it('first expired, first out; what is left past its day is lost', () => {
    const old = bottle('OLD', { expiresOnDay: '2026-03-03' });
    const [course] = walk([bottle('NEW'), old], [demand()]);
    expect(course?.expiredMl.get('OLD')).toBeCloseTo(70, 9);
    expect(course?.shortFromDay.get('oil')).toBe(13);
  });

  // source: hand. Opened on day 0 when it is first drawn from, it keeps four days: to day 4; short on day 5.
  it('a closed bottle begins its opened life when it is first drawn from', () => {
    const [course] = walk([bottle('A', { openedOnDay: null, openedLifeDays: 4 })], [demand()]);
    expect(course?.shortFromDay.get('oil')).toBe(5);
    expect(course?.expiredMl.get('A')).toBeCloseTo(50, 9);
  });

  // source: hand. A can that comes on day 9 lengthens ten days of stock by ten more; one that comes on day 12 comes late.
  it('what is on order serves from its day', () => {
    const can = (fromDay: string) => bottle('PO/1', { fromDay });
    expect(walk([bottle('A'), can('2026-03-10')], [demand()])[0]?.shortFromDay.get('oil')).toBe(20);
    expect(walk([bottle('A'), can('2026-03-13')], [demand()])[0]?.shortFromDay.get('oil')).toBe(10);
  });

  // source: identity. mL in = mL drawn + mL left + mL expired; a higher ratio is short no later, and its level is no higher.
  it('conserves volume and is monotone in the ratio', () => {
    const level = fc.integer({ min: 0, max: 300 });
    const ends = fc.constantFrom(null, '2026-03-05', '2026-03-20');
    const any = fc.record({ levelMl: level, expiresOnDay: ends });
    fc.assert(
      fc.property(
        fc.array(any, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 0, max: 12 }),
        (changes, ml) => {
          const bottles = changes.map((change, i) => bottle(`F-${i}`, change));
          const [less, more] = walk(bottles, [demand({ plannedMlPerDay: ml })], [1, 2]);
          const lessShort = less?.shortFromDay.get('oil') ?? Infinity;
          expect(more?.shortFromDay.get('oil') ?? Infinity).toBeLessThanOrEqual(lessShort);
          const [fullDays, last] = [Math.min(lessShort, 61), less?.levelMl.get('oil')];
          const lost = [...(less?.expiredMl.values() ?? [])].reduce((a, b) => a + b, 0);
          const here = changes.reduce((sum, { levelMl }) => sum + levelMl, 0);
          const drawn = here - lost - (last?.[60] ?? 0);
          expect(drawn).toBeGreaterThanOrEqual(fullDays * ml - 1e-6);
          expect(drawn).toBeLessThanOrEqual(61 * ml + 1e-6);
          for (let day = 0; day <= 60; day++)
            expect(more?.levelMl.get('oil')?.[day] ?? 0).toBeLessThanOrEqual((last?.[day] ?? 0) + 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  // source: hand. Oxygen may draw only to the day on the label, 2 March; the extension serves the rest.
  it('an extension does not serve oxygen', () => {
    const extended = bottle('A', {
      ...{
        expiresOnDay: '2026-03-02',
        extendedUntilDay: '2026-04-30',
        permittedDuties: ['ordinary', 'oxygen'],
      },
    });
    const oxygen = demand({ work: { ...steel, duty: 'oxygen' }, plannedMlPerDay: 1 });
    expect(walk([extended], [oxygen])[0]?.shortFromDay.get('oil')).toBe(2);
    expect(walk([extended], [demand({ plannedMlPerDay: 1 })])[0]?.shortFromDay.get('oil')).toBe(50);
  });
});
