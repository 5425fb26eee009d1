'use client';

import { useEffect, useState } from 'react';
import { type FormState, fieldError, typedOr } from '@/app/_shared/form/form-state';
import { StopScreen } from '@/app/crib/_parts/stop-screen';
import { STOP_HEADLINE } from '@/lib/kit/kit-stop';
import { capital } from '@/lib/text/capital';

/**
 * A wrong hand stops the box as it stops a kit: across the whole screen, at each refusal anew. Without script nothing could
 * take it away again: then the words by the field say it.
 */
export function WrongHandStop({ state }: { readonly state: FormState }) {
  const [stopped, setStopped] = useState(false);
  useEffect(() => setStopped(typedOr(state, 'hand', '') !== ''), [state]);
  if (!stopped) return null;
  return (
    <StopScreen
      headline={STOP_HEADLINE.hand}
      sentence={withoutHeadline(fieldError(state, 'hand') ?? '')}
      onSeen={() => setStopped(false)}
      seenText="Put it back in its box"
    />
  );
}

/** "Hand mismatch: the die must be LH" below a headline that says so already. */
function withoutHeadline(sentence: string): string {
  const said = sentence.toUpperCase().startsWith(`${STOP_HEADLINE.hand}: `);
  return said ? capital(sentence.slice(STOP_HEADLINE.hand.length + 2)) : sentence;
}
