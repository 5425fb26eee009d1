import Link from 'next/link';
import { nowMs } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { UndoButton } from '@/app/_shared/form/undo-button';
import { FormMessage, ToolId } from '@/app/_shared/ui';
import { entryWords } from '@/app/_shared/words/entry-words';
import { shopDb } from '@/db/client';
import { type EntryView, findEntry } from '@/db/queries/entries';

/** How long after an entry its page still says that it was made. */
const FRESH_MS = 60_000;

/** What was just done with a tool, with the way to it and an Undo. An old address says nothing. */
export function JustDone({ entryId }: { readonly entryId: string | string[] | undefined }) {
  const entry = typeof entryId === 'string' ? findEntry(shopDb(), entryId) : undefined;
  if (entry?.subjectKind !== 'tool' || nowMs() - entry.serverAtMs > FRESH_MS) return null;
  return (
    <FormMessage tone="done">
      <Link href={`/tools/${encodeURIComponent(entry.subjectId)}`}>
        <ToolId id={entry.subjectId} />
      </Link>
      : <WhatWasDone entry={entry} />
    </FormMessage>
  );
}

/** What mended an earlier entry is not undone by one press: it would leave the mistake mended by half. */
function WhatWasDone({ entry }: { readonly entry: EntryView }) {
  const words = entryWords(entry, shopNames());
  if (entry.reversesId !== null) return 'taken back. Both entries stay in the log.';
  if (typeof entry.payload.correctsId === 'string')
    return `${words}, moved here. Both entries stay in the log, and both tools’ lives are corrected.`;
  if (entry.reversedById !== null) return `${words}. Taken back.`;
  return (
    <>
      {words}. <UndoButton key={entry.id} entryId={entry.id} />
    </>
  );
}
