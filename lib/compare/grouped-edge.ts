import type { KindDraws } from '../ensemble/kind-draws';
import { exposureDraws, logMedianDraws } from '../ensemble/kind-draws';
import type { EdgeHistory, ExposurePart } from '../life/observation';

/** An edge that belongs to a group with all it has cut (a lot, a supplier), or with part of it (a heat, a lot of fluid). */
export interface GroupedEdge {
  readonly history: EdgeHistory;
  /** What of the history was cut within the group; absent: all of it. */
  readonly within?: { readonly before: readonly ExposurePart[]; readonly during: readonly ExposurePart[] };
  /** Ends cut within the group: the count that a flag demands. */
  readonly ends: number;
}

/** An edge's exposure in every draw, that of the group apart from the rest. */
export interface GroupedDraws {
  readonly logMedian: Float64Array;
  readonly before: { readonly group: Float64Array; readonly other: Float64Array };
  readonly during: { readonly group: Float64Array; readonly other: Float64Array };
  readonly end: EdgeHistory['end'];
}

export function groupedDraws(draws: KindDraws, { history, within }: GroupedEdge): GroupedDraws {
  const split = (all: readonly ExposurePart[], part: readonly ExposurePart[] | undefined) => {
    const whole = exposureDraws(draws, all);
    const group = part === undefined ? whole : exposureDraws(draws, part);
    return { group, other: whole.map((value, k) => Math.max(0, value - (group[k] as number))) };
  };
  return {
    logMedian: logMedianDraws(draws, history),
    before: split(history.before, within?.before),
    during: split(history.during, within?.during),
    end: history.end,
  };
}

/**
 * Log-likelihood of the edge in draw k if lives within the group are `stretch` times as long: what was cut within it then
 * counts 1/stretch. Worn in its last row: −H₁ + ln(1 − e^(H₁ − H₂)); worn at an exact exposure: the density by log
 * exposure; else −H. Source: formula.
 */
export function groupedLogLik(edge: GroupedDraws, k: number, shape: number, stretch: number): number {
  const { before, during, end } = edge;
  const first = (before.group[k] as number) / stretch + (before.other[k] as number);
  const row = (during.group[k] as number) / stretch + (during.other[k] as number);
  const logMedian = edge.logMedian[k] as number;
  const hazard = (x: number): number => (x > 0 ? Math.LN2 * Math.exp(shape * (Math.log(x) - logMedian)) : 0);
  if (end !== 'worn') return -hazard(first + row);
  if (row === 0) return Math.log(Math.max(shape * hazard(first), Number.MIN_VALUE)) - hazard(first);
  const step = hazard(first + row) - hazard(first);
  return Math.log(Math.max(-Math.expm1(-step), Number.MIN_VALUE)) - hazard(first);
}
