import { LOG_LN2 } from '../life/edge-likelihood';
import { residualFromLogs } from '../life/weibull';
import { stratifiedExponentials } from '../numeric/random-stream';
import { fusedResidual } from '../reading/fused-residual';
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
 * Remaining life of one edge in each draw: its conditional Weibull life at the exposure it has, and given what was seen of it,
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
    const beta = shape[k] as number;
    const logScale = (logMedian[k] as number) - LOG_LN2 / beta;
    const age = exposure === undefined ? 0 : (exposure[k] as number);
    const hazard = wear[k] as number;
    const untilWorn =
      seen === undefined || age === 0
        ? residualFromLogs(beta, logScale, age, hazard)
        : fusedResidual({ shape: beta, logScale, age }, seen.sumAt(k), -Math.expm1(-hazard));
    const untilIncident = (luck[k] as number) / (incidentRate[k] as number);
    residual[k] = Math.min(untilWorn, untilIncident);
  }
  return residual;
}
