import type { Standing } from './item-standing';
import type { QueuedLine } from './line-order';
import type { SetItem } from './plan-input';

/**
 * Whether a bottle or can of fluid may be used on one line: not quarantined, permitted on its material, not expiring
 * before the due day is over. How much is left for the line is another question (`shareSupply`). A bottle on another
 * bench counts: fluid is drawn from, not carried off. A bottle that expires during the line does not count at all.
 */
export function fluidStanding(item: SetItem, { line, dueOnDay }: QueuedLine, today: string): Standing {
  if (item.state === 'quarantined') return { freeFromDay: null, obstacle: { kind: 'quarantined' } };
  if (!permits(item.permittedMaterialIds, line.materialId))
    return { freeFromDay: null, obstacle: { kind: 'fluid-not-permitted' } };
  const expiresOnDay = item.expiresOnDay ?? null;
  if (expiresOnDay !== null && expiresOnDay < dueOnDay)
    return { freeFromDay: null, obstacle: { kind: 'fluid-expired', expiresOnDay } };
  return { freeFromDay: today, obstacle: null };
}

/** Whether a list of permitted materials covers one. No list permits nothing. */
export function permits(
  permittedMaterialIds: readonly string[] | 'all' | undefined,
  materialId: string,
): boolean {
  if (permittedMaterialIds === undefined) return false;
  return permittedMaterialIds === 'all' || permittedMaterialIds.includes(materialId);
}
