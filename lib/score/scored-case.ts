import type { Coverage } from './band-coverage';

/** A probability beside what happened: all that a score needs of a settled prediction. */
export interface ScoredCase {
  readonly probability: number;
  readonly outcome: boolean;
  /** The edge that it was about, where several cases may share one. */
  readonly edge?: string | undefined;
}

/** One bin of a reliability diagram. */
export interface ReliabilityBin {
  readonly count: number;
  /** Mean predicted probability of the bin. */
  readonly predicted: number;
  /** Share that came true, with its 95 % interval (Wilson's, over edges where cases share them). */
  readonly observed: number;
  readonly low: number;
  readonly high: number;
}

/** Reliability diagram and the error it shows: Σ (count ÷ all)·|predicted − observed|. */
export interface Reliability {
  readonly bins: readonly ReliabilityBin[];
  readonly calibrationError: number;
}

/** How good a set of probabilities was. */
export interface Score {
  readonly count: number;
  /** Share that came true. */
  readonly baseRate: number;
  readonly brier: number;
  /** 1 − Brier ÷ Brier of always saying the base rate; 0 where the base rate is 0 or 1. */
  readonly skill: number;
  readonly reliability: Reliability;
}

/** The scorecard that a screen shows: ours beside the shop's fixed count on the same cases. Undefined: no case yet. */
export interface Scorecard {
  readonly ours: Score | undefined;
  /** On the cases that have a fixed count. */
  readonly oursOnSame: Score | undefined;
  readonly fixedCount: Score | undefined;
  readonly voided: number;
  readonly open: number;
  /** Of the 80 % bands. */
  readonly coverage: Coverage | undefined;
}
