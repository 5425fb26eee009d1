/**
 * The two tiers of failure. A bug throws (`invariant`); an expected refusal is returned, so that a screen can
 * say it in a sentence and nothing has changed.
 */
export type Result<T, E = Refusal> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: E };

/** A refusal a person can read: a stable `code` for programs, one clear `sentence` for people, the `field` at fault. */
export interface Refusal {
  readonly code: string;
  readonly sentence: string;
  readonly field?: string;
  /** A length whose unit has slipped: what was meant, so that a form can offer it at one press. */
  readonly meant?: { readonly figure: string; readonly unit: 'mm' | 'in' };
}

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function refuse(
  code: string,
  sentence: string,
  field?: string,
): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal: field === undefined ? { code, sentence } : { code, sentence, field } };
}
