/** What a form shows of its last sending. */
export type FormState =
  | { readonly status: 'fresh' }
  | {
      readonly status: 'refused';
      readonly sentence: string;
      readonly field: string | null;
      /** What was typed, so that nothing has to be typed again. */
      readonly values: Readonly<Record<string, string>>;
      /** Where it is plain what was meant: one press sends the form again with these values. */
      readonly mend?: { readonly label: string; readonly values: Readonly<Record<string, string>> };
    }
  | {
      readonly status: 'done';
      readonly sentence: string;
      /** The entry just made, where one press can take it back. */
      readonly undoEntryId?: string;
    };

export const FRESH: FormState = { status: 'fresh' };

/** What was typed into a field of a refused form; the default where the field was not in what was sent. */
export function typedOr(state: FormState, name: string, otherwise: string): string {
  return state.status === 'refused' ? (state.values[name] ?? otherwise) : otherwise;
}

/** The sentence that belongs to a field of a refused form. */
export function fieldError(state: FormState, name: string): string | undefined {
  return state.status === 'refused' && state.field === name ? state.sentence : undefined;
}
