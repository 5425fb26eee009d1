import type { CutOperation } from '../shop/vocabulary';

/** The row of the cut log that an end falls in by count: who cut it, when, with what. */
export interface TracedCut {
  readonly operation: CutOperation;
  readonly entryId: string;
  readonly toolId: string;
  readonly personId: string;
  readonly cutAtMs: number;
  readonly ends: number;
  readonly goodEnds: number;
  readonly dry: boolean;
}
