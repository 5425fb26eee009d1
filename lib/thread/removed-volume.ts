import { pitchMm, turnsPerEnd } from './pitch';
import { basicPitchDiameterMm } from './pitch-diameter';

/**
 * Groove area over P²: a trapezoid 7P/8 wide at the major diameter (crest flat P/8), P/4 wide at the root, 5H/8 deep,
 * H = (√3/2)·P. (7/8 + 1/4)/2 × 5/8 × √3/2.
 */
const GROOVE_AREA_PER_PITCH_SQUARED = ((7 / 8 + 1 / 4) / 2) * (5 / 8) * (Math.sqrt(3) / 2);

/**
 * Metal that a die removes from one end, mm³: turns × π·E × A, with A the area of the basic groove (above) carried
 * round at the pitch diameter E. The groove's centroid lies 0.10 P outside the pitch line, so this reads 1 to 4 % under
 * the solid of revolution on the sizes of a tube shop: good for comparing sizes, not for weighing swarf. Wear is kept
 * in turns. Domain: length ≥ 0, major diameter larger than the thread is deep. Source: basic profile of ASME B1.1.
 */
export function threadRemovedMm3(end: {
  readonly majorMm: number;
  readonly tpi: number;
  readonly lengthMm: number;
}): number {
  const grooveAreaMm2 = GROOVE_AREA_PER_PITCH_SQUARED * pitchMm(end.tpi) ** 2;
  return turnsPerEnd(end) * Math.PI * basicPitchDiameterMm(end) * grooveAreaMm2;
}
