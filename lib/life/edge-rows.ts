import type { LifeEvidence } from './edge-likelihood';
import { type ExposureSum, exposureSumOf } from './exposure-sum';
import { cellsOf, type EdgeHistory } from './observation';
import { PART, type ParameterLayout, REFERENCE_OD_IN } from './parameter-layout';

/** A weighted sum of figures: Σ coefficients[i]·theta[indices[i]]. */
export interface LinearForm {
  readonly indices: readonly number[];
  readonly coefficients: readonly number[];
}

/** One edge, ready for the likelihood: names resolved to positions, exposures added up, logarithms taken. */
export interface EdgeRow {
  readonly evidence: LifeEvidence;
  /** An interval that starts at no exposure at all: `exposure` then holds its upper end. */
  readonly fromZero: boolean;
  readonly logMedian: LinearForm;
  readonly exposure: ExposureSum;
  readonly during: ExposureSum | undefined;
  /** Log of the plain total of base exposure; turns the density by log exposure into one by exposure. */
  readonly logBase: number;
  /** Positions of all figures that this edge depends on, the shape first. */
  readonly touched: readonly number[];
  /**
   * Survival up to where the log began to follow the edge, which is given and so divided out: P(evidence)/S(entered).
   * Source: formula (left truncation, delayed entry).
   */
  readonly entered?: EdgeRow;
  /** Places within `touched` of the figures of the median, of the exposure and of the row. */
  readonly places: {
    readonly logMedian: readonly number[];
    readonly exposure: readonly number[];
    readonly during: readonly number[];
  };
}

/** The edge as a row, or undefined when it cut nothing and so says nothing. */
export function edgeRowOf(history: EdgeHistory, layout: ParameterLayout): EdgeRow | undefined {
  const before = cellsOf(history.before);
  const during = cellsOf(history.during);
  if (before.length + during.length === 0) return undefined;
  const worn = history.end === 'worn';
  const split = worn && during.length > 0 && before.length > 0;
  const all = split ? before : cellsOf([...history.before, ...history.during]);
  const exposure = exposureSumOf(all, layout);
  const duringSum = split ? exposureSumOf(during, layout) : undefined;
  const logMedian = logMedianForm(history, layout);
  const enteredRow = enteredOf(history, layout);
  const touched = [...new Set([0, ...logMedian.indices, ...exposure.params, ...(duringSum?.params ?? [])])];
  const placesOf = (indices: readonly number[]): number[] => indices.map((index) => touched.indexOf(index));
  return {
    evidence: !worn ? 'beyond' : during.length > 0 ? 'between' : 'exactly',
    fromZero: worn && before.length === 0,
    logMedian,
    exposure,
    during: duringSum,
    logBase: Math.log(all.reduce((sum, cell) => sum + cell.base, 0)),
    touched,
    ...(enteredRow && { entered: enteredRow }),
    places: {
      logMedian: placesOf(logMedian.indices),
      exposure: placesOf(exposure.params),
      during: placesOf(duringSum?.params ?? []),
    },
  };
}

/** The edge as it was when the log began to follow it: an edge that lasted beyond that. */
function enteredOf({ entered, ...history }: EdgeHistory, layout: ParameterLayout): EdgeRow | undefined {
  if (entered === undefined) return undefined;
  return edgeRowOf({ ...history, before: entered, during: [], end: 'in-service' }, layout);
}

/** Log median life of an edge: logMedian + sizeExponent·ln(OD/0.375 in) + part + regrinds·regrind. Source: formula. */
export function logMedianForm(
  edge: { partId?: string | undefined; odIn: number; regrinds: number },
  { indexOf }: Pick<ParameterLayout, 'indexOf'>,
): LinearForm {
  const indices: number[] = [];
  const coefficients: number[] = [];
  const add = (name: string, coefficient: number): void => {
    const index = indexOf[name];
    if (index === undefined || coefficient === 0) return;
    indices.push(index);
    coefficients.push(coefficient);
  };
  add('logMedian', 1);
  add('sizeExponent', Math.log(edge.odIn / REFERENCE_OD_IN));
  add('regrind', edge.regrinds);
  if (edge.partId !== undefined) add(PART + edge.partId, 1);
  return { indices, coefficients };
}

export function applyForm({ indices, coefficients }: LinearForm, theta: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < indices.length; i++)
    sum += (coefficients[i] as number) * (theta[indices[i] as number] as number);
  return sum;
}
