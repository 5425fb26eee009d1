export { type ThreadDesignation, type ThreadSeries, threadDesignation, threadSeries } from './designation';
export { helixLengthPerTurnMm, toothPathPerEndM } from './helix';
export { pitchIn, pitchMm, turnsPerEnd } from './pitch';
export { basicPitchDiameterMm } from './pitch-diameter';
export { threadRemovedMm3 } from './removed-volume';
