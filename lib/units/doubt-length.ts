import { type Result, refuse } from '../result';
import { mmToIn } from './inch-mm';
import { type LengthUnit, parseLength, type TypedLength } from './parse-length';

/** Between which lengths a measured figure makes sense at all, mm. */
export interface LengthWindow {
  readonly leastMm: number;
  readonly mostMm: number;
}

/** A typed length that makes sense only in the other unit. */
export interface LengthDoubt {
  /** "9.5 in is 241 mm: did you mean 9.5 mm?" */
  readonly sentence: string;
  /** The same figure with the unit that was meant. */
  readonly meant: { readonly figure: string; readonly unit: LengthUnit; readonly lengthMm: number };
}

const UNIT_AT_END = /\s*(?:mm|in\.?|inch(?:es)?|["″”]|'')\s*$/i;

/**
 * Doubts a typed length that lies outside its window when the same figure in the other unit would lie inside: a slip of the unit,
 * 25.4 times too much or too little. Undefined for everything else: in the window, or off in both units.
 * Symbols: typed length and window in mm. Domain: window above 0 and narrower than 25.4 to 1, or both units could fit.
 * @example doubtLength({ lengthMm: 241.3, typed: '9.5', unit: 'in' }, { leastMm: 5, mostMm: 20 })?.sentence // => "9.5 in is 241 mm: did you mean 9.5 mm?"
 */
export function doubtLength(length: TypedLength, { leastMm, mostMm }: LengthWindow): LengthDoubt | undefined {
  if (length.lengthMm >= leastMm && length.lengthMm <= mostMm) return undefined;
  const figure = length.typed.replace(UNIT_AT_END, '').trim();
  const unit = length.unit === 'in' ? 'mm' : 'in';
  const other = parseLength(figure, unit);
  if (!other.ok || other.value.lengthMm < leastMm || other.value.lengthMm > mostMm) return undefined;
  const inOther =
    length.unit === 'in' ? `${figures(length.lengthMm)} mm` : `${figures(mmToIn(length.lengthMm))} in`;
  return {
    sentence: `${figure} ${length.unit} is ${inOther}: did you mean ${figure} ${unit}?`,
    meant: { figure, unit, lengthMm: other.value.lengthMm },
  };
}

/**
 * Reads a typed length and refuses one whose unit has slipped, naming its field and carrying what was meant, so that a form can
 * offer it at one press. Errors: those of `parseLength`; `unit-slip`.
 */
export function readLength(
  typed: { readonly text: string; readonly unit: LengthUnit; readonly field: string },
  window?: LengthWindow,
): Result<TypedLength> {
  const length = parseLength(typed.text, typed.unit);
  if (!length.ok) return refuse(length.refusal.code, length.refusal.sentence, typed.field);
  const doubt = window === undefined ? undefined : doubtLength(length.value, window);
  return doubt === undefined ? length : refuseSlip(doubt, typed.field);
}

/** The refusal of a length whose unit has slipped. */
export function refuseSlip(doubt: LengthDoubt, field: string): ReturnType<typeof refuse> {
  const { figure, unit } = doubt.meant;
  const { refusal } = refuse('unit-slip', doubt.sentence, field);
  return { ok: false, refusal: { ...refusal, meant: { figure, unit } } };
}

/** Three figures are enough to see that a length is absurd. */
function figures(value: number): string {
  return value >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(2)));
}
