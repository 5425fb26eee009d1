import { nowMs } from '@/app/_server/clock';
import { UndoButton } from '@/app/_shared/form/undo-button';
import { FormMessage } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { findEntry } from '@/db/queries/entries';

const FRESH_MS = 60_000;

/** Says that the kit has just gone out, with its Undo: the kit and all its items go back together. */
export function KitDone({
  entryId,
  kitId,
}: {
  readonly entryId: string | string[] | undefined;
  readonly kitId: string;
}) {
  const entry = entryId === kitId ? findEntry(shopDb(), kitId) : undefined;
  if (entry === undefined || nowMs() - entry.serverAtMs > FRESH_MS) return null;
  return (
    <FormMessage tone="done">
      The kit is out. <UndoButton entryId={kitId} />
    </FormMessage>
  );
}
