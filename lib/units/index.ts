export { fractionAscii, fractionText } from './fraction-text';
export { inToMm, MM_PER_IN, mmToIn, rationalInToMm } from './inch-mm';
export { fromMicro, toMicro } from './micro';
export { parseInches } from './parse-inches';
export { LENGTH_UNITS, type LengthUnit, parseLength, type TypedLength } from './parse-length';
export { compareRationals, type Rational, rational, rationalValue, sameRational } from './rational';
export { looksLikeUnitSlip, type UnitSlip } from './unit-slip';
