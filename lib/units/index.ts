export { doubtLength, type LengthDoubt, type LengthWindow, readLength, refuseSlip } from './doubt-length';
export { fractionAscii, fractionText } from './fraction-text';
export { inToMm, MM_PER_IN, mmToIn, rationalInToMm } from './inch-mm';
export { fromMicro, toMicro } from './micro';
export { parseInches } from './parse-inches';
export { LENGTH_UNITS, type LengthUnit, parseLength, type TypedLength } from './parse-length';
export {
  compareRationals,
  decimalRational,
  type Rational,
  rational,
  rationalValue,
  sameRational,
} from './rational';
export { looksLikeUnitSlip, type UnitSlip } from './unit-slip';
