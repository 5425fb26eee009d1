export {
  type ConeShape,
  checkConeShape,
  coneHeightMm,
  coneVolumeMm3,
  SEAT_ANGLE_DEG,
  seatGapMm,
} from './geometry';
