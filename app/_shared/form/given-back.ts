'use client';

import { createContext, useContext } from 'react';
import { type FormState, FRESH, fieldError, typedOr } from './form-state';

/** The last sending of the form around a field. Outside an entry form nothing was sent. */
export const LastSending = createContext<FormState>(FRESH);

/** What the form around came back with: for what is not a field, such as a fold that stands open after a refusal. */
export function useLastSending(): FormState {
  return useContext(LastSending);
}

interface Asked {
  readonly name: string;
  /** What it starts with. */
  readonly start: string | number | undefined;
  /** Fields of a refusal that are answered here besides its own name, such as 'part.priceMinor'. */
  readonly answers?: string | readonly string[] | undefined;
}

/** What stands in a field after a sending, and what was refused about it: every form part asks this for itself. */
export function useGivenBack({ name, start, answers = [] }: Asked) {
  const sending = useLastSending();
  const names = [name, ...(typeof answers === 'string' ? [answers] : answers)];
  return {
    start: sending.status === 'refused' ? typedOr(sending, name, String(start ?? '')) : start,
    error: names.map((known) => fieldError(sending, known)).find((error) => error !== undefined),
  };
}
