import { z } from 'zod';

/**
 * The small schemas that inputs are made of: one rule and one clear sentence per kind of field, used at every door.
 */

/**
 * Control characters, lone surrogates, line separators, and marks that hide or turn round the text beside them. Joiners stay:
 * scripts and signs need them.
 */
const UNPRINTABLE =
  /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u00ad\u061c\u180e\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\u{e0000}-\u{e007f}]/u;

/**
 * Whether all of a text can be seen as it is written.
 * @example isPrintable('a\u202eb') // => false
 */
export function isPrintable(text: string): boolean {
  return !UNPRINTABLE.test(text);
}

/** Text of at most `max` characters, all of which can be printed. */
export const textField = (name: string, max = 200) =>
  z
    .string({ error: `${name} is needed.` })
    .trim()
    .max(max, `${name} is longer than ${max} characters.`)
    .refine(isPrintable, `${name} holds characters that cannot be printed.`);

/** Text that must not be empty. */
export const nameField = (name: string, max = 80) => textField(name, max).min(1, `${name} is needed.`);

/** An ID made on a device or in a file: 8 to 64 of letters, digits, dash, underscore, dot and colon. */
export const entryIdField = z
  .string({ error: 'The entry ID is missing.' })
  .regex(/^[A-Za-z0-9_.:-]{8,64}$/, 'The entry ID must be 8 to 64 letters, digits, dashes, dots or colons.');

/** A key of ours in an address: lower or upper case letters, digits, dash, underscore and dot. */
export const keyField = (name: string) =>
  z
    .string({ error: `${name} is needed.` })
    .trim()
    .regex(
      /^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/,
      `${name} must be letters, digits, dashes or dots, at most 64.`,
    );

/** A day, YYYY-MM-DD, that exists in the calendar and lies between 1990 and 2199. */
export const dayField = (name: string) =>
  z
    .string({ error: `${name} is needed.` })
    .regex(/^\d{4}-\d{2}-\d{2}$/, `${name} must be a day written as YYYY-MM-DD.`)
    .refine((day) => {
      const ms = Date.parse(`${day}T00:00:00Z`);
      return Number.isFinite(ms) && dayText(ms) === day && day >= '1990-01-01' && day < '2200-01-01';
    }, `${name} is not a day in the calendar between 1990 and 2199.`);

function dayText(ms: number): string {
  return new Date(ms).toISOString().slice(0, 10);
}

/** A count of whole things. */
export const countField = (name: string, { min = 0, max = 100_000 } = {}) =>
  z
    .number({ error: `${name} must be a number.` })
    .int(`${name} must be a whole number.`)
    .min(min, `${name} must be at least ${min}.`)
    .max(max, `${name} must be at most ${max}.`);

/** A finite measured number within bounds. */
export const measureField = (name: string, { min, max }: { min: number; max: number }) =>
  z
    .number({ error: `${name} must be a number.` })
    .min(min, `${name} must be at least ${min}.`)
    .max(max, `${name} must be at most ${max}.`);

/** A moment, epoch milliseconds, between 1990 and 2199. */
export const momentField = (name: string) =>
  z
    .number({ error: `${name} is needed.` })
    .int(`${name} must be a whole number of milliseconds.`)
    .min(631_152_000_000, `${name} lies before 1990.`)
    .max(7_258_118_400_000, `${name} lies after 2199.`);

/** A group of fields sent as one. Keys that nobody asked for are left behind. */
export const form = <S extends z.ZodRawShape>(fields: S) =>
  z.object(fields, { error: 'What was sent cannot be read.' });

/** A yes or no. */
export const yesNoField = (name: string) => z.boolean({ error: `${name} must be yes or no.` });

/** A list of at most `max`. */
export const listField = <T extends z.ZodType>(name: string, item: T, max: number) =>
  z.array(item, { error: `${name} must be a list.` }).max(max, `${name} are more than ${max}.`);

/** A whole sum of millionths that can be held exactly. */
export const microField = (name: string) => countField(name, { max: Number.MAX_SAFE_INTEGER });
