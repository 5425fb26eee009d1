import { connectionText } from '../shop/connection-text';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { servesSize } from '../shop/serves-size';
import { HAND_LABEL, HANDED_ROLES, type Hand } from '../shop/vocabulary';
import type { KitTool } from './judge-custody';
import type { Stop } from './kit-stop';

/** The size that a tool is to serve. */
export interface FitNeed {
  readonly connection: Connection;
  /** The shop's other sizes, to tell a wrong pressure class from a wrong size. */
  readonly connections: readonly Connection[];
}

/**
 * Why a tool does not fit a size, wherever it stands: the other hand, the other pressure class, another size. Null where it
 * fits. Hand is asked first: it is the mistake that costs most.
 */
export function judgeFit(
  tool: Pick<KitTool, 'id' | 'role' | 'hand'>,
  part: Part,
  { connection, connections }: FitNeed,
): Stop | null {
  const wanted = connectionText(connection);
  if (HANDED_ROLES.includes(tool.role) && tool.hand !== connection.hand)
    return ['hand', `${tool.id} is ${handText(tool.hand)}; ${wanted} is ${HAND_LABEL[connection.hand]}.`];
  if (servesSize(part, connection.id)) return null;
  const sameTube = connections.some(
    ({ id, odNum, odDen }) =>
      part.fitsConnectionIds.includes(id) && odNum * connection.odDen === connection.odNum * odDen,
  );
  return sameTube
    ? ['pressure', `${tool.id} serves this tube in the other pressure class; the job is ${wanted}.`]
    : ['size', `${tool.id} does not serve ${wanted}.`];
}

function handText(hand: Hand | null): string {
  return hand === null ? 'of no marked hand' : HAND_LABEL[hand];
}
