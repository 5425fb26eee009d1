export {
  CONE_DROPS,
  DROPS_PER_ML_DEFAULT,
  DROPS_PER_SECOND_TURN,
  expectedMlPerEnd,
  type FluidCut,
  plannedDropsPerEnd,
  plannedMlPerEnd,
  WASTE_FACTOR_DEFAULT,
} from './use-per-end';
