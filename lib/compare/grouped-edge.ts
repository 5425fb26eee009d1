import type { KindDraws } from '../ensemble/kind-draws';
import { exposureDraws, logMedianDraws } from '../ensemble/kind-draws';
import { LOG_LN2 } from '../life/edge-likelihood';
import { gatheredBy, type LifeLaw, LOG_LOGISTIC_STRETCH } from '../life/life-law';
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
  /** What it had cut when the log began to follow it; absent: nothing. */
  readonly entered?: { readonly group: Float64Array; readonly other: Float64Array } | undefined;
  readonly logLogistic: Uint8Array | undefined;
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
    entered: history.entered && split(history.entered, within === undefined ? undefined : []),
    logLogistic: draws.logLogistic,
  };
}

/**
 * Log-likelihood of the edge in draw k if lives within the group are `stretch` times as long: what was cut within it then
 * counts 1/stretch. H the cumulative hazard of the draw's law. Worn in its last row: −H₁ + ln(1 − e^(H₁ − H₂)); worn at an exact
 * exposure: the density by log exposure; else −H. Given that it lasted until the log began to follow it: + H₀.
 * Source: formula.
 */
export function groupedLogLik(edge: GroupedDraws, k: number, shape: number, stretch: number): number {
  const { before, during, end, entered } = edge;
  const at = (use: { group: Float64Array; other: Float64Array }): number =>
    (use.group[k] as number) / stretch + (use.other[k] as number);
  const law = edge.logLogistic?.[k] === 1 ? 'log-logistic' : 'weibull';
  const power = law === 'weibull' ? shape : LOG_LOGISTIC_STRETCH * shape;
  const offset = law === 'weibull' ? LOG_LN2 : 0;
  const logMedian = edge.logMedian[k] as number;
  const hazard = (x: number): number =>
    x > 0 ? gatheredBy(law, offset + power * (Math.log(x) - logMedian)) : 0;
  const [first, row] = [at(before), at(during)];
  const given = entered === undefined ? 0 : hazard(at(entered));
  if (end !== 'worn') return given - hazard(first + row);
  if (row === 0) return given + logDensity(law, power, hazard(first));
  const step = hazard(first + row) - hazard(first);
  return given + Math.log(Math.max(-Math.expm1(-step), Number.MIN_VALUE)) - hazard(first);
}

/** Log density by log exposure: β·H·S, or b·(1 − S)·S. */
function logDensity(law: LifeLaw, power: number, hazard: number): number {
  const rise = law === 'weibull' ? hazard : -Math.expm1(-hazard);
  return Math.log(Math.max(power * rise, Number.MIN_VALUE)) - hazard;
}
