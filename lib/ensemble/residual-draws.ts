import { LOG_LN2 } from '../life/edge-likelihood';
import { residualFromLogs } from '../life/weibull';
import { stratifiedUniforms } from '../numeric/random-stream';
import type { KindDraws } from './kind-draws';

export interface EdgeInDraws {
  /** Names the edge's own chance: the same key always meets the same luck. */
  readonly key: string;
  readonly logMedian: Float64Array;
  /** Exposure so far in each draw; without it the edge is new. */
  readonly exposure?: Float64Array;
}

/**
 * Remaining life of one edge in each draw: its conditional Weibull life at the exposure it has, by inverse transform of a
 * unit exponential figure, cut short where an incident (constant rate, unit exponential of its own) comes first.
 * In reference exposure. Source: formula.
 */
export function residualDraws(draws: KindDraws, { key, logMedian, exposure }: EdgeInDraws): Float64Array {
  const wear = stratifiedUniforms(`wear:${key}`, draws.drawCount);
  const luck = stratifiedUniforms(`incident:${key}`, draws.drawCount);
  const residual = new Float64Array(draws.drawCount);
  for (let k = 0; k < residual.length; k++) {
    const shape = draws.shape[k] as number;
    const logScale = (logMedian[k] as number) - LOG_LN2 / shape;
    const age = exposure === undefined ? 0 : (exposure[k] as number);
    const untilWorn = residualFromLogs(shape, logScale, age, -Math.log(wear[k] as number));
    const untilIncident = -Math.log(luck[k] as number) / (draws.incidentRate[k] as number);
    residual[k] = Math.min(untilWorn, untilIncident);
  }
  return residual;
}
