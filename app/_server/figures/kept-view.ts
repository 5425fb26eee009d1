import 'server-only';
import { shopDb } from '@/db/client';
import type { Db } from '@/db/open';
import { openSnapshot, type Snapshot } from '@/db/queries/snapshot';
import type { Outlook } from '@/lib/outlook/outlook';

/** The figures last worked out, with the record they rest on held open beside them. */
export interface KeptView {
  readonly path: string;
  /** The server's connection that they were asked for under: another file of the same name is another shop. */
  readonly of: Db;
  readonly version: number;
  readonly today: string;
  readonly readAtMs: number;
  readonly outlook: Outlook;
  record: Snapshot;
}

/** Pages that began with a record may still be reading it: it is closed only after so long. */
const GRACE_MS = 10_000;
/** So long after new figures the record is taken hold of anew, if nothing was entered meanwhile. */
const QUIET_MS = 3000;

/** Lets go of a record when no page can be reading it any more. */
export function retire(record: Snapshot): void {
  setTimeout(() => record.close(), GRACE_MS).unref();
}

/**
 * In a quiet moment: moves what was written into the database's one file and holds the record from there. A record held
 * since before that would keep the side file growing for as long as the shop goes on writing.
 */
export function settleSoon(isStillKept: (view: KeptView) => boolean, view: KeptView): void {
  setTimeout(() => {
    if (!isStillKept(view)) return;
    try {
      shopDb().$client.pragma('wal_checkpoint(PASSIVE)');
      const record = openSnapshot(view.path);
      if (record.version !== view.version) return record.close();
      retire(view.record);
      view.record = record;
    } catch {
      // The file is gone or busy: the record held so far still serves, and whoever writes next is told.
    }
  }, QUIET_MS).unref();
}
