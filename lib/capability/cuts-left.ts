import { invariant } from '../invariant';
import type { EdgeKind } from '../shop/vocabulary';
import type { PlanLine } from './plan-input';

const CUT_OF = { blade: 'cone', die: 'thread' } as const;

/**
 * How many cuts of a line one kind of edge still has before it: cones for a blade, threads for a die. Ends that are coned and
 * wait for their thread ask nothing more of a blade. For the plan check, the orders and the issue of tools alike.
 * Domain: between 0 and the ends still to make.
 * @example cutsLeftOf({ endsToMake: 24, cutsLeft: { cone: 2, thread: 24 } }, 'blade') // => 2
 * @example cutsLeftOf({ endsToMake: 24 }, 'die') // => 24
 */
export function cutsLeftOf(line: Pick<PlanLine, 'endsToMake' | 'cutsLeft'>, kind: EdgeKind): number {
  const left = line.cutsLeft?.[CUT_OF[kind]] ?? line.endsToMake;
  invariant(left >= 0 && left <= line.endsToMake, 'a line has no more cuts left than ends to make');
  return left;
}
