import type { ExposureCell } from './observation';
import { MATERIAL, type ParameterLayout } from './parameter-layout';

/**
 * One edge's exposure as the fit reads it: X = Σ base·exp(log factor of the material + dry + rework), Nelson's cumulative
 * exposure. `params` are the positions of the figures it depends on; `members[c]` says which of those cell c uses.
 */
export interface ExposureSum {
  readonly logBases: readonly number[];
  readonly params: readonly number[];
  readonly members: readonly (readonly number[])[];
  /** Where the value and its derivatives are written: one room to a sum, used again at every evaluation. */
  readonly room: LogExposure;
}

/** Value of log X with its first and second derivatives by the figures in `params`; `cellLogs` is working space. */
export interface LogExposure {
  log: number;
  readonly gradient: Float64Array;
  readonly hessian: Float64Array;
  readonly cellLogs: Float64Array;
}

export function exposureSumOf(cells: readonly ExposureCell[], layout: ParameterLayout): ExposureSum {
  const used = cells.map((cell) => parametersOf(cell, layout));
  const params = [...new Set(used.flat())].sort((a, b) => a - b);
  return {
    logBases: cells.map((cell) => Math.log(cell.base)),
    params,
    members: used.map((indices) => indices.map((index) => params.indexOf(index))),
    room: {
      log: Number.NEGATIVE_INFINITY,
      gradient: new Float64Array(params.length),
      hessian: new Float64Array(params.length ** 2),
      cellLogs: new Float64Array(cells.length),
    },
  };
}

/** Positions of the figures that set how fast this cutting wears: none for a first cut in the reference material, wet. */
export function parametersOf(
  { materialId, dry, rework }: Pick<ExposureCell, 'materialId' | 'dry' | 'rework'>,
  { indexOf }: Pick<ParameterLayout, 'indexOf'>,
): number[] {
  const indices: number[] = [];
  const add = (name: string): void => {
    const index = indexOf[name];
    if (index !== undefined) indices.push(index);
  };
  add(MATERIAL + materialId);
  if (dry) add('dry');
  if (rework) add('rework');
  return indices;
}

/**
 * Works out log X and its derivatives, in the sum's own room: weights w = share of X, ∇ = Σ w·v, ∇² = Σ w·vvᵀ − ∇∇ᵀ,
 * v the figures that a cell uses. The next call with the same sum writes over it. Source: formula.
 */
export function logExposure(sum: ExposureSum, theta: ArrayLike<number>): LogExposure {
  const { logBases, params, members, room } = sum;
  let most = Number.NEGATIVE_INFINITY;
  for (let c = 0; c < logBases.length; c++) {
    let log = logBases[c] as number;
    for (const member of members[c] as readonly number[]) log += theta[params[member] as number] as number;
    room.cellLogs[c] = log;
    if (log > most) most = log;
  }
  let total = 0;
  for (let c = 0; c < logBases.length; c++) total += Math.exp((room.cellLogs[c] as number) - most);
  room.log = total === 0 ? Number.NEGATIVE_INFINITY : most + Math.log(total);
  if (params.length > 0) addDerivatives(sum, most, total);
  return room;
}

function addDerivatives({ members, params, room }: ExposureSum, most: number, total: number): void {
  const n = params.length;
  const { gradient, hessian, cellLogs } = room;
  gradient.fill(0);
  hessian.fill(0);
  for (let c = 0; c < cellLogs.length; c++) {
    const used = members[c] as readonly number[];
    if (used.length === 0) continue;
    const weight = Math.exp((cellLogs[c] as number) - most) / total;
    for (const a of used) {
      gradient[a] = (gradient[a] as number) + weight;
      for (const b of used) hessian[a * n + b] = (hessian[a * n + b] as number) + weight;
    }
  }
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < n; b++) {
      hessian[a * n + b] = (hessian[a * n + b] as number) - (gradient[a] as number) * (gradient[b] as number);
    }
  }
}
