import type { Chlorinated } from '../shop/fluid-lot';
import type { Part } from '../shop/part';
import type { Bottle } from './pick-first';
import type { BottleDays } from './use-by';

/** A marked bottle as the record has it. */
export interface BottleTool extends Omit<BottleDays, 'openedLifeDays'> {
  readonly id: string;
  readonly state: Bottle['state'];
  readonly levelMl: number | null;
  /** What the supplier answered for its lot; null where nobody has written anything down of it. */
  readonly lotChlorinated: Chlorinated | null;
}

/** What is said of its product. */
export type BottlePart = Pick<
  Part,
  'openedLifeDays' | 'permittedMaterialIds' | 'permittedDuties' | 'chlorinated'
>;

/**
 * A bottle as it is judged, put together of what is marked on it, what is said of its product and what is known of its lot:
 * the answer for the lot counts before what is said of the product. The one way in which the crib, the bench, the plan and
 * the issue see a bottle.
 */
export function bottleOfTool(tool: BottleTool, part: BottlePart): Bottle {
  const { id: toolId, state, levelMl, expiresOnDay, openedOnDay, extendedUntilDay = null } = tool;
  const { openedLifeDays, permittedMaterialIds, permittedDuties } = part;
  return {
    ...{ toolId, state, levelMl, expiresOnDay, openedOnDay, openedLifeDays, extendedUntilDay },
    ...{ permittedMaterialIds, permittedDuties },
    chlorinated: tool.lotChlorinated ?? part.chlorinated,
  };
}
