import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { orderSizes, sizeLabel } from '../shop/size';
import { HAND_LABEL, type Hand, ROLE_LABEL, type Role } from '../shop/vocabulary';

/** A tool as its label names it. */
export interface LabelledTool {
  readonly id: string;
  readonly role: Role;
  readonly hand: Hand | null;
}

/**
 * What stands under the ID, the most needed first: the tube size with the hand in letters and words, then the kind, then the
 * thread's designation where the part has one. A hand is always said, since an unmarked die is easily taken for the other.
 */
export function labelLines(
  tool: LabelledTool,
  part: Pick<Part, 'fitsConnectionIds' | 'designation'>,
  connections: readonly Connection[],
): string[] {
  const fits = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  const sizes = orderSizes(fits.map(({ odNum, odDen }) => ({ num: odNum, den: odDen })));
  const size = sizes.length === 0 || sizes.length > 3 ? '' : `${sizes.map(sizeLabel).join(' · ')} in`;
  const hand = tool.hand === null ? '' : `${tool.hand} ${HAND_LABEL[tool.hand]}`;
  const first = [size, hand].filter((word) => word !== '').join('  ');
  return [first, ROLE_LABEL[tool.role], part.designation].filter((line) => line !== '');
}
