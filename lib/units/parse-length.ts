import { ok, type Result, refuse } from '../result';
import { rationalInToMm } from './inch-mm';
import { parseFigure } from './parse-inches';
import { rationalValue } from './rational';

/** The two units in which a shop types a length. */
export const LENGTH_UNITS = ['mm', 'in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

/** A length as it was typed and as it is stored: millimetres, the words typed, and the unit that was meant. */
export interface TypedLength {
  readonly lengthMm: number;
  readonly typed: string;
  readonly unit: LengthUnit;
}

/** Longest length taken at the door, mm. A tube end is far below it; a figure above it is a slip. */
const LENGTH_MAX_MM = 10_000;
/** Longest text that is searched for a unit; a longer one is no length. */
const TEXT_MAX = 60;
const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  in: 'in',
  'in.': 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
};

/**
 * Reads a length with its unit: "9.5 mm", "7/16 in", `0.4375"`, or a bare figure when the unit was chosen in a field
 * beside it. A bare figure with no chosen unit is refused: 9.5 could be either, and the two differ by 25.4.
 * Refused too: another unit, a unit that contradicts the field, a fraction of a millimetre, a length not above 0 or
 * above 10 m. lengthMm = figure for mm, figure × 25.4 for in, rounded once.
 */
export function parseLength(typed: string | number, chosenUnit?: LengthUnit): Result<TypedLength> {
  const text = String(typed).trim();
  const { figure, word } = text.length > TEXT_MAX ? { figure: text, word: '' } : splitUnit(text);
  const unit = resolveUnit(text, word, chosenUnit);
  if (!unit.ok) return unit;
  const read = parseFigure(figure, text);
  if (!read.ok) return read;
  if (unit.value === 'mm' && /[/⁄∕／½¼¾⅛⅜⅝⅞]/.test(figure)) {
    return refuse(
      'length-fraction-mm',
      `“${text}” is a fraction in mm. Write mm as a decimal, or choose in.`,
    );
  }
  const lengthMm = unit.value === 'in' ? rationalInToMm(read.value) : rationalValue(read.value);
  if (lengthMm > LENGTH_MAX_MM)
    return refuse('length-too-long', `“${text}” is longer than 10 m. Check the unit.`);
  return ok({ lengthMm, typed: text, unit: unit.value });
}

function splitUnit(text: string): { figure: string; word: string } {
  const match = /^(.*?[\d½¼¾⅛⅜⅝⅞.])\s*([^\d\s½¼¾⅛⅜⅝⅞][^\d½¼¾⅛⅜⅝⅞]*)$/.exec(text);
  return match === null
    ? { figure: text, word: '' }
    : { figure: match[1] ?? '', word: (match[2] ?? '').trim() };
}

function resolveUnit(text: string, word: string, chosenUnit: LengthUnit | undefined): Result<LengthUnit> {
  if (text === '')
    return refuse('figure-missing', 'No length is entered. Write it with its unit, such as 11.1 mm.');
  if (word === '') {
    if (chosenUnit !== undefined) return ok(chosenUnit);
    return refuse('length-unit-missing', `“${text}” has no unit. Write mm or in after it.`);
  }
  const typedUnit = UNIT_WORDS[word.toLowerCase()];
  if (typedUnit === undefined) {
    return refuse('length-unit-unknown', `“${text}” has a unit that is not taken here. Use mm or in.`);
  }
  if (chosenUnit !== undefined && chosenUnit !== typedUnit) {
    return refuse(
      'length-unit-conflict',
      `“${text}” says ${typedUnit}, but ${chosenUnit} is chosen. Make them agree.`,
    );
  }
  return ok(typedUnit);
}
