'use client';

import { startTransition, useActionState, useEffect, useState } from 'react';
import { Button } from '../ui/button';
import { newDeviceId } from './device-id';
import { type FormState, FRESH } from './form-state';
import { undoEntry } from './undo-entry';

const OFFERED_MS = 10_000;

/** Takes back the entry just made, for ten seconds. Afterwards the same is done from the tool's history. */
export function UndoButton({ entryId }: { readonly entryId: string }) {
  const [offered, setOffered] = useState(true);
  const [state, undo, pending] = useActionState(
    async (before: FormState): Promise<FormState> =>
      undoEntry(before, { targetId: entryId, entryId: newDeviceId(), deviceAtMs: Date.now() }),
    FRESH,
  );
  useEffect(() => {
    const timer = setTimeout(() => setOffered(false), OFFERED_MS);
    return () => clearTimeout(timer);
  }, []);

  if (state.status !== 'fresh') return <span> {state.sentence}</span>;
  if (!offered) return null;
  return (
    <Button disabled={pending} onClick={() => startTransition(undo)}>
      Undo
    </Button>
  );
}
