import { nowMs } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { UndoButton } from '@/app/_shared/form/undo-button';
import { FormMessage } from '@/app/_shared/ui';
import { entryWords } from '@/app/_shared/words/entry-words';
import { shopDb } from '@/db/client';
import { findEntry } from '@/db/queries/entries';

const FRESH_MS = 60_000;

/** What was just done with a bottle, with an Undo. An old address says nothing. */
export function JustDone({ entryId }: { readonly entryId: string | string[] | undefined }) {
  const entry = typeof entryId === 'string' ? findEntry(shopDb(), entryId) : undefined;
  if (entry?.subjectKind !== 'tool' || nowMs() - entry.serverAtMs > FRESH_MS) return null;
  const words = entryWords(entry, shopNames());
  return (
    <FormMessage tone="done">
      {entry.subjectId}: {words}.{' '}
      {entry.reversedById === null ? <UndoButton key={entry.id} entryId={entry.id} /> : 'Taken back.'}
    </FormMessage>
  );
}
