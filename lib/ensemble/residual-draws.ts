import { LOG_LN2 } from '../life/edge-likelihood';
import { residualFromLogs } from '../life/weibull';
import { stratifiedUniforms } from '../numeric/random-stream';
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
  const wear = stratifiedUniforms(`wear:${key}`, draws.drawCount);
  const luck = stratifiedUniforms(`incident:${key}`, draws.drawCount);
  const seen = exposure && readingDraws(draws, readings);
  const residual = new Float64Array(draws.drawCount);
  for (let k = 0; k < residual.length; k++) {
    const shape = draws.shape[k] as number;
    const logScale = (logMedian[k] as number) - LOG_LN2 / shape;
    const age = exposure === undefined ? 0 : (exposure[k] as number);
    const chance = wear[k] as number;
    const untilWorn =
      seen === undefined
        ? residualFromLogs(shape, logScale, age, -Math.log(chance))
        : fusedResidual({ shape, logScale, age }, seen.sumAt(k), 1 - chance);
    const untilIncident = -Math.log(luck[k] as number) / (draws.incidentRate[k] as number);
    residual[k] = Math.min(untilWorn, untilIncident);
  }
  return residual;
}
