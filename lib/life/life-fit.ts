import type { NewtonResult } from '../numeric/newton';
import type { EdgeKind } from '../shop/vocabulary';
import type { AxisSpread } from './axis-spread';
import type { FirstGuess } from './first-guess';
import type { LifeModel } from './log-posterior';
import type { ParameterLayout } from './parameter-layout';
import type { LifePriors } from './priors';

/** How many edges the fit rests on, by how they ended. */
export interface EdgeCounts {
  readonly worn: number;
  readonly incident: number;
  readonly removedWorking: number;
  readonly inService: number;
}

/** What a reader of the fit ought to know, as fixed codes; the screen words them. */
export type LifeWarning =
  | 'no-worn-edges'
  | 'few-worn-edges'
  | 'edges-without-exposure-ignored'
  | 'default-life-used'
  | 'material-without-prior'
  | 'not-converged';

/** The top of a posterior and how it falls off: what draws are made from. */
export interface FitPeak {
  /** The most probable value of every figure, in the order of `layout.names`. */
  readonly theta: Float64Array;
  /** Laplace covariance of the free figures, row-major in the order of `layout.free`. */
  readonly covariance: Float64Array;
  /** Log of the law's evidence by Laplace's approximation, up to a constant that is the same for every law. */
  readonly logEvidence: number;
  /** How the posterior leans along the axes of that covariance. */
  readonly axisSpread: AxisSpread;
  /** The posterior itself, edge by edge, against which draws are weighed. Without it they are Laplace's. */
  readonly model?: LifeModel;
}

/** What the log and the beliefs together say about one kind of edge. Plain data: may be sent to another thread. */
export interface LifeFit extends FitPeak {
  readonly ok: true;
  readonly kind: EdgeKind;
  readonly layout: ParameterLayout;
  /** The most probable value of every figure, by name: logShape, logMedian, sizeExponent, regrind, dry, rework,
   * guessError (with first guesses), `part:<id>`, `material:<id>`. */
  readonly mode: Readonly<Record<string, number>>;
  /** The same fit with log-logistic lives, and the belief in them before the log spoke; absent where they are ruled out. */
  readonly logLogistic?: (FitPeak & { readonly chance: number }) | undefined;
  readonly logPosterior: number;
  readonly logLik: number;
  readonly iterations: number;
  readonly stoppedBy: NewtonResult['stoppedBy'];
  readonly warnings: readonly LifeWarning[];
  readonly counts: EdgeCounts;
  readonly countsByPart: Readonly<Record<string, EdgeCounts>>;
  /** Total exposure of all edges in reference exposure, at the most probable factors: what incidents are counted against. */
  readonly exposure: number;
  readonly priors: LifePriors;
  readonly guesses: readonly FirstGuess[];
}

export interface LifeFitRefusal {
  readonly ok: false;
  readonly reason: 'not-identified';
  /** One clear sentence. */
  readonly sentence: string;
}
