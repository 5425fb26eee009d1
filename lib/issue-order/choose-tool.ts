import type { EdgeTask } from './edge-task';
import { type EdgeSupply, meanLife, toolWork } from './edge-task';
import { endsAtRisk } from './objective';

/** Why a tool is not the one that goes out. */
export type PassedOver =
  /** It goes to this line, or stays for it. */
  | { readonly kind: 'kept-for'; readonly lineId: string }
  /** It would do it too, but more of it is left than the line needs. */
  | { readonly kind: 'fuller' }
  /** One edge of it is not sure enough to last. */
  | { readonly kind: 'may-not-last' };

/** Why a tool goes out. */
export type Chosen =
  /** The line has it in hand already. */
  | 'in-hand'
  /** The most worn of those that last. */
  | 'most-worn-that-lasts'
  /** The only one that lasts. */
  | 'only-one-that-lasts'
  /** None lasts with the certainty asked; this one leaves the fewest ends at risk, all lines together. */
  | 'fewest-at-risk';

/** A tool for a line with what it would do. */
export interface ToolChoice {
  readonly toolId: string;
  readonly probability: number;
  readonly madeEnds: number;
}

/**
 * For one line alone: the most worn tool that still finishes it with the required probability, so that full edges stay
 * whole for long jobs; where none does, the one that leaves the fewest ends at risk. Undefined without a tool.
 * Of two alike the first by ID. Source: definition.
 */
export function chooseTool(task: EdgeTask, supplies: readonly EdgeSupply[]): ToolChoice | undefined {
  const ranked = supplies
    .filter(({ toolId }) => task.toolIds.includes(toolId))
    .map(({ toolId, life }) => {
      const [work = { probability: 0, madeEnds: 0 }] = toolWork(life, [task]).work;
      return { toolId, ...work, atRisk: endsAtRisk(task, work), life: Math.round(meanLife(life)) };
    })
    .sort((a, b) => a.atRisk - b.atRisk || a.life - b.life || (a.toolId < b.toolId ? -1 : 1));
  const [best] = ranked;
  return best && { toolId: best.toolId, probability: best.probability, madeEnds: best.madeEnds };
}
