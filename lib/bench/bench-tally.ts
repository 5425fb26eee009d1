import type { CutOperation, RejectCause } from '../shop/vocabulary';

/** One press at the bench, in the order in which it was made. */
export type BenchPress =
  | {
      readonly kind: 'ends';
      readonly toolId: string;
      readonly operation: CutOperation;
      readonly ends: number;
    }
  | {
      readonly kind: 'reject';
      readonly toolId: string;
      readonly operation: CutOperation;
      readonly cause: RejectCause;
    };

/** What one tool has done in the work in hand. */
export interface BenchTally {
  readonly toolId: string;
  readonly operation: CutOperation;
  /** Every end that was cut, good or not. */
  readonly ends: number;
  readonly goodEnds: number;
  readonly rejects: readonly { readonly cause: RejectCause; readonly count: number }[];
}

/**
 * What the presses add up to, tool by tool in the order of first use. A press of ends counts good ends; a reject counts one
 * end that was cut and is not good. Undo is leaving the last press out.
 */
export function benchTallies(presses: readonly BenchPress[]): BenchTally[] {
  const tallies = new Map<string, BenchTally>();
  for (const press of presses) {
    const key = `${press.toolId} ${press.operation}`;
    const { toolId, operation } = press;
    const before = tallies.get(key) ?? { toolId, operation, ends: 0, goodEnds: 0, rejects: [] };
    tallies.set(key, press.kind === 'ends' ? counted(before, press.ends) : rejected(before, press.cause));
  }
  return [...tallies.values()].filter(({ ends }) => ends > 0);
}

function counted(tally: BenchTally, ends: number): BenchTally {
  return { ...tally, ends: tally.ends + ends, goodEnds: tally.goodEnds + ends };
}

function rejected(tally: BenchTally, cause: RejectCause): BenchTally {
  const others = tally.rejects.filter((reject) => reject.cause !== cause);
  const count = (tally.rejects.find((reject) => reject.cause === cause)?.count ?? 0) + 1;
  return { ...tally, ends: tally.ends + 1, rejects: [...others, { cause, count }] };
}
