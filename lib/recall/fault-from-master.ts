import type { FaultDirection } from '../shop/recall';
import type { Role } from '../shop/vocabulary';

/** Masters whose size goes over into what is set on them. */
const HANDS_ON: readonly Role[] = ['setting-plug', 'master-seat'];

/**
 * Which way a gauge is likely out when its master is: a ring set on a plug that is too large is too large. Not known for a
 * micrometer or wires, whose error turns round with how they are used. Source: formula, a setting copies its master.
 * @example faultFromMaster('setting-plug', 'small') // => "small"
 * @example faultFromMaster('micrometer', 'small') // => "unknown"
 */
export function faultFromMaster(master: Role, direction: FaultDirection): FaultDirection {
  return HANDS_ON.includes(master) ? direction : 'unknown';
}
