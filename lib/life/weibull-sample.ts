/** Lives of one group, by what is known of each. Ages in any one unit of exposure. */
export interface WeibullSample {
  /** Wore out exactly at this age. */
  readonly wornAt: ArrayLike<number>;
  /** Still working at this age: in service, or taken out while good. */
  readonly workingAt: ArrayLike<number>;
  /** Wore out after `from` and not after `to`; `from` may be 0. */
  readonly wornBetween?: readonly { readonly from: number; readonly to: number }[];
}

export type WeibullFit =
  | {
      readonly ok: true;
      readonly shape: number;
      readonly scale: number;
      readonly logLik: number;
      /** Covariance of (ln scale, ln shape) from the observed information, row-major. */
      readonly covariance: readonly [number, number, number, number];
      readonly iterations: number;
      readonly stoppedBy: 'converged' | 'stalled' | 'cap';
    }
  | {
      readonly ok: false;
      readonly reason: 'nothing-worn' | 'lives-equal' | 'age-not-positive' | 'not-identified';
    };
