import { LOG_LN2 } from './edge-likelihood';
import type { EdgeRow, LinearForm } from './edge-rows';
import type { ExposureSum } from './exposure-sum';
import { type LifeLaw, LOG_LOGISTIC_STRETCH } from './life-law';
import type { LifeModel } from './log-posterior';

/** Figures at many points at once: one column of `count` values to each figure of the model. */
export interface FigureColumns {
  readonly count: number;
  readonly columns: readonly Float64Array[];
}

/**
 * Log posterior at every point, up to a constant, without derivatives: for weighing draws against the exact posterior.
 * The same terms as `logPosterior`, worked out edge by edge over all points at once, so that factors of materials and
 * medians of parts are computed once to a point and not once to an edge. Source: formula.
 */
export function logPosteriorValues(model: LifeModel, { count, columns }: FigureColumns): Float64Array {
  const values = new Float64Array(count);
  for (const { form, mean, sd } of model.beliefs) {
    const figure = formColumn(form, { count, columns });
    for (let k = 0; k < count; k++) {
      const miss = ((figure[k] as number) - mean) / sd;
      values[k] = (values[k] as number) - 0.5 * miss * miss;
    }
  }
  const room = workRoom({ count, columns }, model.law ?? 'weibull');
  for (const row of model.rows) addRow(row, room, values);
  return values;
}

interface WorkRoom extends FigureColumns {
  readonly law: LifeLaw;
  readonly shape: Float64Array;
  readonly before: Float64Array;
  readonly after: Float64Array;
  /** Log medians and factors worked out so far. */
  readonly medians: Map<string, Float64Array>;
  readonly factors: Map<string, Float64Array>;
}

function workRoom({ count, columns }: FigureColumns, law: LifeLaw): WorkRoom {
  const stretch = law === 'weibull' ? 1 : LOG_LOGISTIC_STRETCH;
  return {
    ...{ count, columns, law },
    shape: (columns[0] as Float64Array).map((logShape) => stretch * Math.exp(logShape)),
    before: new Float64Array(count),
    after: new Float64Array(count),
    medians: new Map(),
    factors: new Map(),
  };
}

/** Adds one edge, given that it lasted until the log began to follow it: less the log of surviving up to there. */
function addRow(row: EdgeRow, room: WorkRoom, values: Float64Array): void {
  const { count, before, after } = room;
  const median = kept(room.medians, keyOf(row.logMedian), () => formColumn(row.logMedian, room));
  before.fill(0);
  addExposure(row.exposure, room, before);
  if (row.during !== undefined) {
    after.set(before);
    addExposure(row.during, room, after);
    gather(after, median, room);
  }
  gather(before, median, room);
  if (row.during !== undefined) {
    addBetween(room, values);
  } else if (row.evidence === 'exactly') addExactly(room, values);
  else
    for (let k = 0; k < count; k++) {
      const hazard = before[k] as number;
      values[k] = (values[k] as number) + (row.fromZero ? logChance(hazard) : -hazard);
    }
  if (row.entered === undefined) return;
  before.fill(0);
  addExposure(row.entered.exposure, room, before);
  gather(before, median, room);
  for (let k = 0; k < count; k++) values[k] = (values[k] as number) + (before[k] as number);
}

/** Turns exposures into the cumulative hazard gathered up to them, in place: ln 2·(X/m)^β, or ln(1 + (X/m)^b). */
function gather(exposure: Float64Array, median: Float64Array, { count, shape, law }: WorkRoom): void {
  const weibull = law === 'weibull';
  const offset = weibull ? LOG_LN2 : 0;
  for (let k = 0; k < count; k++) {
    const log = Math.log(exposure[k] as number) - (median[k] as number);
    const power = Math.exp(offset + (shape[k] as number) * log);
    exposure[k] = weibull ? power : Math.log1p(power);
  }
}

/** Log density by log exposure, from what was gathered: β·H·S, or b·(1 − e^(−A))·S. */
function addExactly({ count, shape, before, law }: WorkRoom, values: Float64Array): void {
  for (let k = 0; k < count; k++) {
    const hazard = before[k] as number;
    const rise = law === 'weibull' ? Math.log(hazard) : Math.log(-Math.expm1(-hazard));
    values[k] = (values[k] as number) + Math.log(shape[k] as number) + Math.max(rise, -745) - hazard;
  }
}

function addBetween({ count, before, after }: WorkRoom, values: Float64Array): void {
  for (let k = 0; k < count; k++) {
    const first = before[k] as number;
    values[k] = (values[k] as number) + logChance((after[k] as number) - first) - first;
  }
}

/** ln(1 − e^(−D)), to about eleven digits; a chance of nothing at all counts as the smallest there is. */
function logChance(hazard: number): number {
  if (hazard > 1e-5) return Math.log(1 - Math.exp(-hazard));
  return hazard > 0 ? Math.log(hazard) - hazard / 2 : -745;
}

/** Adds Σ base·factor over the cells of a sum, at every point. */
function addExposure(sum: ExposureSum, room: WorkRoom, target: Float64Array): void {
  const { count } = room;
  for (let c = 0; c < sum.logBases.length; c++) {
    const base = Math.exp(sum.logBases[c] as number);
    const used = (sum.members[c] as readonly number[]).map((member) => sum.params[member] as number);
    if (used.length === 0) {
      for (let k = 0; k < count; k++) target[k] = (target[k] as number) + base;
      continue;
    }
    const factor = kept(room.factors, used.join(), () => factorColumn(used, room));
    for (let k = 0; k < count; k++) target[k] = (target[k] as number) + base * (factor[k] as number);
  }
}

function factorColumn(indices: readonly number[], room: FigureColumns): Float64Array {
  return formColumn({ indices, coefficients: indices.map(() => 1) }, room).map(Math.exp);
}

function formColumn({ indices, coefficients }: LinearForm, { count, columns }: FigureColumns): Float64Array {
  const total = new Float64Array(count);
  for (let i = 0; i < indices.length; i++) {
    const column = columns[indices[i] as number] as Float64Array;
    const weight = coefficients[i] as number;
    for (let k = 0; k < count; k++) total[k] = (total[k] as number) + weight * (column[k] as number);
  }
  return total;
}

function keyOf({ indices, coefficients }: LinearForm): string {
  return `${indices.join()};${coefficients.join()}`;
}

function kept(held: Map<string, Float64Array>, key: string, make: () => Float64Array): Float64Array {
  const known = held.get(key) ?? make();
  held.set(key, known);
  return known;
}
