import { LOG_LN2 } from '../life/edge-likelihood';
import { LOG_LOGISTIC_STRETCH } from '../life/life-law';
import { stratifiedExponentials } from '../numeric/random-stream';
import { fusedResidual, residualOf } from '../reading/fused-residual';
import type { WornReading } from '../reading/reading';
import type { KindDraws } from './kind-draws';
import { readingDraws } from './reading-sums';

export interface EdgeInDraws {
  /** Names the edge's own chance: the same key always meets the same luck. */
  readonly key: string;
  readonly logMedian: Float64Array;
  /** Exposure so far in each draw; without it the edge is new. */
  readonly exposure?: Float64Array;
  /** What was seen of the edge. The figures of the fit stay as they are; only this edge's own life listens. */
  readonly readings?: readonly WornReading[];
}

/**
 * Remaining life of one edge in each draw: its conditional life (Weibull or log-logistic, as the draw has it) at the exposure it has, and given what was seen of it,
 * by inverse transform of its own chance, cut short where an incident (constant rate, unit exponential of its own) comes
 * first. In reference exposure. Source: formula.
 */
export function residualDraws(draws: KindDraws, edge: EdgeInDraws): Float64Array {
  const { key, logMedian, exposure, readings = [] } = edge;
  const { shape, incidentRate, drawCount } = draws;
  const wear = stratifiedExponentials(`wear:${key}`, drawCount);
  const luck = stratifiedExponentials(`incident:${key}`, drawCount);
  const seen = exposure && readingDraws(draws, readings);
  const residual = new Float64Array(drawCount);
  for (let k = 0; k < drawCount; k++) {
    const tailed = draws.logLogistic?.[k] === 1;
    const beta = (shape[k] as number) * (tailed ? LOG_LOGISTIC_STRETCH : 1);
    const logScale = (logMedian[k] as number) - (tailed ? 0 : LOG_LN2 / beta);
    const age = exposure === undefined ? 0 : (exposure[k] as number);
    const hazard = wear[k] as number;
    const life = { shape: beta, logScale, age, tailed };
    const untilWorn =
      seen === undefined || age === 0
        ? residualOf(life, hazard)
        : fusedResidual(life, seen.sumAt(k), -Math.expm1(-hazard));
    const untilIncident = (luck[k] as number) / (incidentRate[k] as number);
    residual[k] = Math.min(untilWorn, untilIncident);
  }
  return residual;
}
