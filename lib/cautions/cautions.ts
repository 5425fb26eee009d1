import type { Caution, CautionPlace } from './caution';
import { PRESSURE_CAUTIONS } from './pressure-cautions';
import { RECORD_CAUTIONS } from './record-cautions';
import { SERVICE_CAUTIONS } from './service-cautions';
import { WORK_CAUTIONS } from './work-cautions';

/** Every caution the shop's screens give. They never replace the maker's manual, the SDS or local rules. */
export const CAUTIONS: readonly Caution[] = [
  ...WORK_CAUTIONS,
  ...SERVICE_CAUTIONS,
  ...PRESSURE_CAUTIONS,
  ...RECORD_CAUTIONS,
];

/**
 * The cautions that belong to one place, in the order in which they are given.
 * @example cautionsAt('broken').length // => 1
 */
export function cautionsAt(place: CautionPlace): Caution[] {
  return CAUTIONS.filter(({ at }) => at.includes(place));
}

/** Where work in a material or for a duty has cautions of its own: titanium chips burn, oil film burns in oxygen. */
export function serviceCautionPlaces(work: { titanium: boolean; duty: string }): CautionPlace[] {
  return [
    ...(work.titanium ? (['titanium'] as const) : []),
    ...(work.duty === 'oxygen' ? (['oxygen'] as const) : []),
  ];
}
