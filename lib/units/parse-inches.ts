import { ok, type Result, refuse } from '../result';
import { type Rational, rational } from './rational';

/** Largest part (numerator, denominator or whole number) that a typed figure may have. */
const PART_MAX = 1_000_000;
const DECIMALS_MAX = 6;
/** Longest text that is looked at; also keeps the patterns below quick on hostile input. */
const TEXT_MAX = 60;

/** One-character fractions that keyboards and spreadsheets produce, as text with a plain slash. */
const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const INCH_MARK = /\s*(?:"|″|”|''|\bin\b\.?|\binch(?:es)?\b|(?<=\d)(?:in\b\.?|inch(?:es)?\b))\s*$/i;
const DECIMAL = /^(\d{0,7})(?:\.(\d{0,6}))?$/;
const FRACTION = /^(?:(\d{1,7})(?:\s+|\s*-\s*))?(\d{1,7})\s*\/\s*(\d{1,7})$/;

/**
 * Reads an inch size as it is written in the shop: "9/16", "9⁄16", "½", "1 1/2", "1-1/2", "0.5625", "1", with or
 * without a trailing inch mark. Exact: no figure passes through a decimal on the way.
 * Domain: above 0, at most 6 decimals, every part at most 1 000 000. Anything else is refused with a sentence.
 */
export function parseInches(text: string): Result<Rational> {
  return parseFigure(text.length > TEXT_MAX ? text : text.replace(INCH_MARK, ''), text);
}

/**
 * The figure alone, no unit: a whole number, a decimal with a point, a fraction or a mixed number, above 0.
 * `typed` is what the refusal quotes, where it differs from `text`.
 */
export function parseFigure(text: string, typed = text): Result<Rational> {
  if (text.length > TEXT_MAX)
    return refuse('figure-unreadable', 'That is too long to be a figure. Write it as 9/16.');
  const plain = plainFigure(text);
  const quoted = `“${typed.trim().slice(0, 24)}”`;
  if (plain === '')
    return refuse('figure-missing', 'Nothing is entered here. Write a figure such as 9/16 or 0.5625.');
  if (/^\d*,\d+$/.test(plain)) {
    return refuse('figure-comma', `${quoted} has a comma. Write decimals with a point, such as 0.5625.`);
  }
  const read = readFraction(plain) ?? readDecimal(plain);
  if (read === undefined) {
    return refuse(
      'figure-unreadable',
      `${quoted} is not a figure. Write it as 9/16, 1 1/2 or a decimal with at most ${DECIMALS_MAX} places.`,
    );
  }
  if (read.num <= 0) return refuse('figure-not-positive', `${quoted} is not above zero.`);
  return ok(read);
}

function plainFigure(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign] ?? sign}`)
    .replace(/[⁄∕／]/g, '/')
    .trim();
}

function readFraction(plain: string): Rational | undefined {
  const match = FRACTION.exec(plain);
  if (match === null) return undefined;
  const [whole, num, den] = [Number(match[1] ?? 0), Number(match[2]), Number(match[3])];
  const tooLong = whole > PART_MAX || num > PART_MAX || den > PART_MAX;
  // "1 17/16" is a slip of the pen, not a mixed number.
  const improperMixed = match[1] !== undefined && num >= den;
  if (den === 0 || tooLong || improperMixed) return undefined;
  return rational(whole * den + num, den);
}

function readDecimal(plain: string): Rational | undefined {
  const match = DECIMAL.exec(plain);
  const whole = match?.[1] ?? '';
  const places = match?.[2] ?? '';
  if (match === null || whole + places === '' || Number(whole) > PART_MAX) return undefined;
  const den = 10 ** places.length;
  return rational(Number(whole) * den + Number(places === '' ? 0 : places), den);
}
