import type { Operation } from '../shop/vocabulary';

/**
 * Where the cut log and the accepted ends disagree. The log counts wear, the acceptance counts product; more ends
 * accepted than were cut good means that a row is missing or an end was counted twice. Undefined where they agree:
 * fewer accepted than cut is the usual course of a day. Whole ends.
 * @example acceptedBeyondCut({ operations: ['cone', 'thread'], goodCones: 20, goodThreads: 18, acceptedEnds: 20 }) // => 2
 */
export function acceptedBeyondCut(line: {
  readonly operations: readonly Operation[];
  readonly goodCones: number;
  readonly goodThreads: number;
  readonly acceptedEnds: number;
}): number | undefined {
  const cut = [
    ...(line.operations.includes('cone') ? [line.goodCones] : []),
    ...(line.operations.includes('thread') ? [line.goodThreads] : []),
  ];
  if (cut.length === 0) return undefined;
  const beyond = line.acceptedEnds - Math.min(...cut);
  return beyond > 0 ? beyond : undefined;
}
