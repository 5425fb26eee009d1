import { describe, expect, it } from 'vitest';
import { COMPLETE_SET, setNeeds } from '@/lib/capability/complete-set';
import { CALIBRATED_ROLES, EDGE_KINDS } from '@/lib/shop/vocabulary';

const roles = (...ops: Parameters<typeof setNeeds>[0]) => setNeeds(ops).map(({ role }) => role);

// source: hand. Common practice, no source: what lies on the bench for a cone, for a thread, for a joint.
describe('setNeeds', () => {
  it('a cone takes body, guide, blade, cone gauge, and what any cutting takes', () => {
    const cone = [
      'coning-body',
      'coning-guide',
      'blade',
      'cone-gauge',
      'collet',
      'deburr-tool',
      'brush',
      'fluid',
    ];
    expect(roles('cone').sort()).toEqual(cone.sort());
  });

  it('a thread takes stock, guide, die, three gauges, and what any cutting takes', () => {
    const thread = ['die-stock', 'threading-guide', 'die', 'go-ring', 'not-go-ring', 'length-gauge'];
    expect(roles('thread').sort()).toEqual([...thread, 'collet', 'deburr-tool', 'brush', 'fluid'].sort());
  });

  it('an assembled joint takes a torque wrench and cuts nothing', () => {
    expect(roles('assemble')).toEqual(['torque-wrench']);
    expect(roles()).toEqual([]);
  });

  it('names every role once, however many operations share it', () => {
    const all = roles('cone', 'thread', 'assemble');
    expect(new Set(all).size).toBe(all.length);
    expect(all).toHaveLength(COMPLETE_SET.length);
  });

  it('edges wear, fluid is used up, gauges belong to acceptance, hand binds die and rings', () => {
    const where = (test: (need: (typeof COMPLETE_SET)[number]) => boolean) =>
      COMPLETE_SET.filter(test).map(({ role }) => role);
    expect(where(({ use }) => use === 'wears').sort()).toEqual([...EDGE_KINDS]);
    expect(where(({ use }) => use === 'consumed')).toEqual(['fluid']);
    expect(where(({ handBound }) => handBound)).toEqual(['die', 'go-ring', 'not-go-ring']);
    for (const role of where(({ phase }) => phase === 'accept')) expect(CALIBRATED_ROLES).toContain(role);
  });
});
