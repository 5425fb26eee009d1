export type { ThreadToLimit } from './basis';
export { type ConnectionLimits, connectionLimits } from './connection-limits';
export { type ThreadDesignation, threadDesignation } from './designation';
export { overWiresFlatIn, overWiresSharpVIn } from './handbook-wires';
export { helixLengthPerTurnMm, toothPathPerEndM } from './helix';
export {
  INTERNAL_CLASSES,
  type InternalClass,
  type InternalLimits,
  internalThreadLimits,
} from './internal-limits';
export { EXTERNAL_CLASSES, type ExternalClass, type ExternalLimits, externalThreadLimits } from './limits';
export { pitchIn, pitchMm, turnsPerEnd } from './pitch';
export { basicPitchDiameterMm } from './pitch-diameter';
export { type PitchMargin, pitchMargin } from './pitch-margin';
export { threadRemovedMm3 } from './removed-volume';
export { tensileStressAreaIn2 } from './stress-area';
export {
  bestWireMm,
  isUsableWire,
  leadAngleDeg,
  overWiresMm,
  pitchDiameterFromWiresMm,
  wireRangeMm,
} from './three-wire';
export { lookAlikes, numberedSizeIn, type ThreadSeries, threadSeries } from './unified-series';
