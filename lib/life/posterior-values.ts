import { LOG_LN2 } from './edge-likelihood';
import type { EdgeRow, LinearForm } from './edge-rows';
import type { ExposureSum } from './exposure-sum';
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
  const room = workRoom({ count, columns });
  for (const row of model.rows) addRow(row, room, values);
  return values;
}

interface WorkRoom extends FigureColumns {
  readonly shape: Float64Array;
  readonly before: Float64Array;
  readonly after: Float64Array;
  /** Log medians and factors worked out so far. */
  readonly medians: Map<string, Float64Array>;
  readonly factors: Map<string, Float64Array>;
}

function workRoom({ count, columns }: FigureColumns): WorkRoom {
  return {
    ...{ count, columns },
    shape: (columns[0] as Float64Array).map(Math.exp),
    before: new Float64Array(count),
    after: new Float64Array(count),
    medians: new Map(),
    factors: new Map(),
  };
}

function addRow(row: EdgeRow, room: WorkRoom, values: Float64Array): void {
  const { count, shape, before, after } = room;
  const median = kept(room.medians, keyOf(row.logMedian), () => formColumn(row.logMedian, room));
  before.fill(0);
  addExposure(row.exposure, room, before);
  if (row.evidence === 'between' && row.during !== undefined) {
    after.set(before);
    addExposure(row.during, room, after);
    addBetween(room, median, values);
    return;
  }
  const exactly = row.evidence === 'exactly';
  for (let k = 0; k < count; k++) {
    const beta = shape[k] as number;
    const z = LOG_LN2 + beta * (Math.log(before[k] as number) - (median[k] as number));
    const hazard = Math.exp(z);
    const term = exactly ? Math.log(beta) + z - hazard : row.fromZero ? logChance(hazard) : -hazard;
    values[k] = (values[k] as number) + term;
  }
}

function addBetween({ count, shape, before, after }: WorkRoom, median: Float64Array, values: Float64Array) {
  for (let k = 0; k < count; k++) {
    const beta = shape[k] as number;
    const m = median[k] as number;
    const first = Math.exp(LOG_LN2 + beta * (Math.log(before[k] as number) - m));
    const second = Math.exp(LOG_LN2 + beta * (Math.log(after[k] as number) - m));
    values[k] = (values[k] as number) + logChance(second - first) - first;
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
