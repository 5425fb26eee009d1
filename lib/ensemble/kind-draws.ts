import { applyForm, logMedianForm } from '../life/edge-rows';
import { parametersOf } from '../life/exposure-sum';
import type { LifeFit } from '../life/life-fit';
import { cellsOf, type ExposurePart } from '../life/observation';
import { MATERIAL, PART } from '../life/parameter-layout';
import { normalQuantile } from '../numeric/normal';
import { stratifiedUniforms } from '../numeric/random-stream';
import { incidentRateDraws } from './incident-rate';
import { drawPosterior } from './posterior-draws';

/** How an end is cut: what decides how fast it wears an edge. */
export interface CutCondition {
  readonly materialId: string;
  readonly dry: boolean;
  readonly rework: boolean;
}

/** The futures of one kind of edge before any tool is looked at. */
export interface KindDraws {
  readonly fit: LifeFit;
  readonly drawCount: number;
  /** Every figure of the fit, draw by draw, in the order of its layout. */
  readonly figures: readonly Float64Array[];
  readonly shape: Float64Array;
  /** 1 in the draws in which lives are log-logistic; absent: Weibull lives in all of them. */
  readonly logLogistic?: Uint8Array;
  readonly incidentRate: Float64Array;
  /** Wear factors worked out so far, by condition. */
  readonly factors: Map<string, Float64Array>;
}

export function kindDrawsOf(fit: LifeFit, drawCount: number): KindDraws {
  const { figures, logLogistic } = drawPosterior(fit, drawCount);
  const shape = (figures[0] as Float64Array).map(Math.exp);
  return {
    fit,
    drawCount,
    figures,
    shape,
    logLogistic,
    incidentRate: incidentRateDraws(fit, drawCount),
    factors: new Map(),
  };
}

/** Wear factor of a cut in each draw; undefined for a material that neither the log nor the priors know. */
export function wearFactorDraws(draws: KindDraws, cut: CutCondition): Float64Array | undefined {
  const { fit, figures, drawCount, factors } = draws;
  const key = `${cut.dry ? 1 : 0}${cut.rework ? 1 : 0}${cut.materialId}`;
  const held = factors.get(key);
  if (held !== undefined) return held;
  const known =
    cut.materialId === fit.priors.referenceMaterialId || MATERIAL + cut.materialId in fit.layout.indexOf;
  if (!known) return undefined;
  const logFactor = new Float64Array(drawCount);
  for (const index of parametersOf(cut, fit.layout)) addTo(logFactor, figures[index] as Float64Array);
  const factor = logFactor.map(Math.exp);
  factors.set(key, factor);
  return factor;
}

/** Exposure so far in each draw, in reference exposure. A material that nobody knows counts as the reference. */
export function exposureDraws(draws: KindDraws, parts: readonly ExposurePart[]): Float64Array {
  const exposure = new Float64Array(draws.drawCount);
  for (const cell of cellsOf(parts)) {
    const factor = wearFactorDraws(draws, cell) ?? new Float64Array(draws.drawCount).fill(1);
    for (let k = 0; k < exposure.length; k++)
      exposure[k] = (exposure[k] as number) + cell.base * (factor[k] as number);
  }
  return exposure;
}

/** Log median life in each draw. A part without a figure of its own gets one drawn from the spread between parts. */
export function logMedianDraws(
  { fit, figures, drawCount }: KindDraws,
  edge: { partId: string; odIn: number; regrinds: number },
): Float64Array {
  const form = logMedianForm(edge, fit.layout);
  const values = new Float64Array(drawCount);
  const theta = new Float64Array(fit.layout.names.length);
  for (let k = 0; k < drawCount; k++) {
    for (const index of form.indices) theta[index] = (figures[index] as Float64Array)[k] as number;
    values[k] = applyForm(form, theta);
  }
  if (PART + edge.partId in fit.layout.indexOf) return values;
  const prior = fit.priors.part;
  if (prior.form === 'normal') {
    const drawn = stratifiedUniforms(`part:${fit.kind}:${edge.partId}`, drawCount);
    addTo(
      values,
      drawn.map((u) => prior.mean + prior.sd * normalQuantile(u)),
    );
  } else if (prior.form === 'fixed') addTo(values, new Float64Array(drawCount).fill(prior.value));
  return values;
}

function addTo(target: Float64Array, source: Float64Array): void {
  for (let k = 0; k < target.length; k++) target[k] = (target[k] as number) + (source[k] as number);
}
