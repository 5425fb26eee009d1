import type { Part } from './part';
import { UNSIZED_ROLES } from './vocabulary';

/**
 * Whether a part serves a size: its list names the size, or it names none and its kind is bound to none. A die, a guide or a
 * ring of which nobody has written down the size serves no size. For the crib, the plan and the forms alike.
 * @example servesSize({ role: 'die', fitsConnectionIds: [] }, '9-16-high') // => false
 * @example servesSize({ role: 'brush', fitsConnectionIds: [] }, '9-16-high') // => true
 */
export function servesSize(part: Pick<Part, 'role' | 'fitsConnectionIds'>, connectionId: string): boolean {
  return part.fitsConnectionIds.includes(connectionId) || servesEverySize(part);
}

/** Whether a part serves every size, those added later too. */
export function servesEverySize({
  role,
  fitsConnectionIds,
}: Pick<Part, 'role' | 'fitsConnectionIds'>): boolean {
  return fitsConnectionIds.length === 0 && UNSIZED_ROLES.includes(role);
}
