import { invariant } from '../invariant';

/** Where a pitch diameter stands between its limits. */
export interface PitchMargin {
  /** How much it may still grow before GO must refuse; negative when it is over. A worn die cuts large. */
  readonly toMaxMm: number;
  /** How much it lies above the lower limit; negative when it is under. */
  readonly toMinMm: number;
  /** 0 at the lower limit, 1 at the upper. */
  readonly share: number;
  readonly zone: 'under' | 'within' | 'over';
}

/**
 * What room a measured pitch diameter has left between its limits. A measured size says nothing of lead and angle errors, which make a
 * thread larger to its ring than to the wires: the rings decide. Domain: max above min. Source: formula.
 * @example pitchMargin({ pitchDiameterMm: 9, minMm: 8.9, maxMm: 9.1 }).zone // => "within"
 */
export function pitchMargin(thread: {
  readonly pitchDiameterMm: number;
  readonly minMm: number;
  readonly maxMm: number;
}): PitchMargin {
  const { pitchDiameterMm, minMm, maxMm } = thread;
  invariant(maxMm > minMm, 'pitchMargin requires an upper limit above the lower one');
  const zone = pitchDiameterMm > maxMm ? 'over' : pitchDiameterMm < minMm ? 'under' : 'within';
  return {
    toMaxMm: maxMm - pitchDiameterMm,
    toMinMm: pitchDiameterMm - minMm,
    share: (pitchDiameterMm - minMm) / (maxMm - minMm),
    zone,
  };
}
