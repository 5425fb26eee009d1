import type { Role } from '../shop/vocabulary';

/**
 * What a gauge is checked on in the shop. Rings on their setting plug, a cone gauge on a master seat with blue, plugs
 * over wires. Source: common practice, no source.
 */
const MASTER_ROLES: Partial<Record<Role, readonly Role[]>> = {
  'go-ring': ['setting-plug'],
  'not-go-ring': ['setting-plug'],
  'cone-gauge': ['master-seat', 'micrometer'],
  'length-gauge': ['micrometer'],
  'setting-plug': ['thread-wires', 'micrometer'],
  micrometer: ['setting-plug', 'thread-wires', 'micrometer'],
  'thread-wires': ['micrometer'],
  'master-seat': ['micrometer'],
  'torque-wrench': ['torque-wrench'],
};

/**
 * Where a master comes among those that a gauge may be checked on: 0 for the usual one.
 * @example masterRank('cone-gauge', 'master-seat') // => 0
 */
export function masterRank(gauge: Role, master: Role): number {
  return MASTER_ROLES[gauge]?.indexOf(master) ?? -1;
}

/** A gauge as far as the choice of its master asks. */
export interface MasterCandidate {
  readonly id: string;
  readonly role: Role;
  readonly fitsConnectionIds: readonly string[];
}

/**
 * Whether one gauge can serve as the master of a check of another: of a kind for that, not itself, and of the same size
 * where it is a setting plug for a ring.
 * @example canCheckOn({ id: 'G-1', role: 'go-ring', fitsConnectionIds: ['a'] }, { id: 'SP-1', role: 'setting-plug', fitsConnectionIds: ['b'] }) // => false
 */
export function canCheckOn(gauge: MasterCandidate, master: MasterCandidate): boolean {
  if (gauge.id === master.id || MASTER_ROLES[gauge.role]?.includes(master.role) !== true) return false;
  const isRing = gauge.role === 'go-ring' || gauge.role === 'not-go-ring';
  return !isRing || gauge.fitsConnectionIds.some((id) => master.fitsConnectionIds.includes(id));
}
