/** Readers of form fields: what is left empty is null or the default, what is not a number stays for zod to refuse. */

export function text(form: FormData, name: string): string {
  const value = form.get(name);
  return typeof value === 'string' ? value.trim() : '';
}

export function textOrNull(form: FormData, name: string): string | null {
  const value = text(form, name);
  return value === '' ? null : value;
}

const BETWEEN_THOUSANDS = /(?<=\d)[ \u00a0\u202f](?=\d{3}(?:\D|$))/g;
const PLAIN_NUMBER = /^-?(?:\d+\.?\d*|\.\d+)$/;

/** A number as typed, in figures with a point. Spaces between thousands are dropped; anything else becomes NaN, which zod refuses. */
export function number(form: FormData, name: string): number | undefined {
  const value = text(form, name).replace(BETWEEN_THOUSANDS, '');
  if (value === '') return undefined;
  return PLAIN_NUMBER.test(value) ? Number(value) : Number.NaN;
}

export function numberOrNull(form: FormData, name: string): number | null {
  return number(form, name) ?? null;
}

export function checked(form: FormData, name: string): boolean {
  return form.get(name) !== null;
}

/** The stamp that every entry form carries. */
export function stamp(form: FormData): { entryId: string; deviceAtMs: number | undefined } {
  return { entryId: text(form, 'entryId'), deviceAtMs: number(form, 'deviceAtMs') };
}
