import type { PlanInput } from '@/lib/capability/check-plan';
import { setNeeds } from '@/lib/capability/complete-set';
import type { Arrival, PlanLine, SetItem } from '@/lib/capability/plan-input';
import { OPERATIONS, type Role } from '@/lib/shop/vocabulary';
import { statedDraws } from './life-draws';

/** Day 1 of every hand-built plan. */
export const TODAY = '2026-03-02';

/** One connection 'S' (left hand), one material 'M' with factor 1, one complete set with a year of calibration. */
export function completeSet(connectionId = 'S'): SetItem[] {
  return setNeeds(OPERATIONS).map(({ role }) =>
    setItem(role, role === 'fluid' ? {} : { fitsConnectionIds: [connectionId] }),
  );
}

export function setItem(role: Role, change: Partial<SetItem> = {}): SetItem {
  return {
    toolId: role.toUpperCase(),
    partId: `part-${role}`,
    role,
    hand: 'LH',
    fitsConnectionIds: ['S'],
    state: 'in-crib',
    dueOnDay: '2027-03-02',
    ...(role === 'fluid' ? { fitsConnectionIds: 'all', levelMl: 5000, permittedMaterialIds: 'all' } : {}),
    ...change,
  };
}

/** Ten ends, coned and threaded, from day 8 to day 12: 10 turns and 100 mm³ an end. */
export function planLine(change: Partial<PlanLine> = {}): PlanLine {
  return {
    lineId: 'L1',
    jobId: 'J1',
    connectionId: 'S',
    materialId: 'M',
    endsToMake: 10,
    operations: ['cone', 'thread'],
    startOnDay: '2026-03-09',
    dueOnDay: '2026-03-13',
    fluidMlPerEnd: 1,
    exposurePerEnd: { cone: 100, thread: 10 },
    ...change,
  };
}

export function arrival(role: Role, change: Partial<Arrival> = {}): Arrival {
  return {
    orderId: 'PO-1',
    partId: `part-${role}`,
    role,
    hand: 'LH',
    fitsConnectionIds: ['S'],
    quantity: 1,
    expectedOnDay: '2026-03-20',
    ...change,
  };
}

/** A shop that can make the line with ease; each test takes something away. */
export function plan(change: Partial<PlanInput> = {}): PlanInput {
  return {
    today: TODAY,
    lines: [planLine()],
    connections: [{ connectionId: 'S', hand: 'LH' }],
    items: completeSet(),
    arrivals: [],
    draws: plentifulDraws(),
    ...change,
  };
}

/** Edges that outlast any plan here. */
export function plentifulDraws() {
  return statedDraws({ drawCount: 8, tools: { DIE: 1e6, BLADE: 1e7 }, factors: { M: 1 } });
}

/** The set with one role's item changed (or removed with null). */
export function setWith(role: Role, change: Partial<SetItem> | null): SetItem[] {
  return completeSet().flatMap((item) =>
    item.role !== role ? [item] : change === null ? [] : [{ ...item, ...change }],
  );
}
