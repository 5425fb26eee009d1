import type { Db } from '../open';
import { openReadOnly } from '../open-read-only';
import { dataVersion } from './entries';

/** The record as it stood at one version, whatever is entered since. */
export interface Snapshot {
  readonly db: Db;
  readonly version: number;
  close(): void;
}

/**
 * Opens the record as it stands now and holds it there: one read transaction on a connection of its own, which sees
 * nothing that is written later and keeps nobody from writing. Close it soon: while it is open the side file of the
 * database cannot start again from its beginning.
 */
export function openSnapshot(path: string): Snapshot {
  const db = openReadOnly(path);
  try {
    db.$client.exec('BEGIN');
    return { db, version: dataVersion(db), close: () => db.$client.close() };
  } catch (error) {
    db.$client.close();
    throw error;
  }
}
