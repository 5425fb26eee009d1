import { type FluidObjection, fluidObjection } from '../fluid/permit-fluid';
import type { Standing } from './item-standing';
import type { QueuedLine } from './line-order';
import type { SetItem } from './plan-input';

/**
 * Whether a bottle or can of fluid may be used on one line: not quarantined, permitted on its material and for its service, not expiring
 * before the due day is over. How much is left for the line is another question (`shareSupply`). A bottle on another
 * bench counts: fluid is drawn from, not carried off. A bottle that expires during the line does not count at all.
 */
export function fluidStanding(item: SetItem, { line, dueOnDay }: QueuedLine, today: string): Standing {
  if (item.state === 'quarantined') return { freeFromDay: null, obstacle: { kind: 'quarantined' } };
  const why = objectionTo(item, line);
  if (why !== null) return { freeFromDay: null, obstacle: { kind: 'fluid-not-permitted', why } };
  const labelled = line.duty === 'oxygen' ? item.labelledUseByDay : undefined;
  const expiresOnDay = labelled ?? item.expiresOnDay ?? null;
  if (expiresOnDay !== null && expiresOnDay < dueOnDay)
    return { freeFromDay: null, obstacle: { kind: 'fluid-expired', expiresOnDay } };
  return { freeFromDay: today, obstacle: null };
}

/** Why a bottle or a can on order may not be used on a line; null where it may. */
export function objectionTo(
  fluid: Pick<SetItem, 'permittedMaterialIds' | 'permittedDuties' | 'chlorinated'>,
  { materialId, titanium = false, duty = 'ordinary' }: QueuedLine['line'],
): FluidObjection | null {
  const { permittedMaterialIds, permittedDuties, chlorinated = 'unknown' } = fluid;
  return fluidObjection(
    { permittedMaterialIds, permittedDuties, chlorinated },
    { materialId, titanium, duty },
  );
}
