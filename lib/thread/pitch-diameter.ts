import { invariant } from '../invariant';
import { pitchMm } from './pitch';

/** 3√3/8: the pitch line lies ³⁄₈ H below the crest on each side, H = (√3/2)·P for a 60° thread. ASME B1.1. */
const PITCH_LINE_DROP = 0.64951905;

/**
 * Basic pitch diameter of a 60° unified thread: E = D − 0.64951905·P. Symbols: D, basic major diameter, mm; P, pitch,
 * mm, from n threads per inch. Basic size only: no class allowance and no tolerance, so it is not a limit to gauge by.
 * Domain: D > 0.64951905·P. Source: ASME B1.1.
 */
export function basicPitchDiameterMm({
  majorMm,
  tpi,
}: {
  readonly majorMm: number;
  readonly tpi: number;
}): number {
  const diameterMm = majorMm - PITCH_LINE_DROP * pitchMm(tpi);
  invariant(diameterMm > 0, 'basicPitchDiameterMm requires a diameter larger than the thread is deep');
  return diameterMm;
}
