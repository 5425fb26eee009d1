import { nowMs } from '@/app/_server/clock';
import { UndoButton } from '@/app/_shared/form/undo-button';
import { FormMessage } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { findEntry } from '@/db/queries/entries';

/** Younger than this, an entry is still offered for undoing on the page that it led to. */
const FRESH_MS = 60_000;

interface JustDoneProps {
  /** The entry that led here, from the address. */
  readonly entryId: unknown;
  readonly children: React.ReactNode;
}

/** What was just entered, with its Undo; nothing once it is old, taken back, or no such entry. */
export function JustDone({ entryId, children }: JustDoneProps) {
  const entry = typeof entryId === 'string' ? findEntry(shopDb(), entryId) : undefined;
  if (entry === undefined || entry.reversedById !== null || nowMs() - entry.serverAtMs > FRESH_MS)
    return null;
  return (
    <FormMessage tone="done">
      <div className="cluster">
        <div>{children}</div>
        <UndoButton entryId={entry.id} />
      </div>
    </FormMessage>
  );
}
