export * from './caution';
export { CAUTIONS, cautionsAt, serviceCautionPlaces } from './cautions';
