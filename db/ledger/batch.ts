import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type { Db } from '../open';
import { findEntryRow } from './entry-row';

/**
 * Whether a list of entries that a command writes as one was sent before as another list: longer or shorter. What was
 * written as one is sent again as one. `idAt` gives the ID of each place.
 */
export function checkBatch(db: Db, idAt: (place: number) => string, count: number): Result<null, Refusal> {
  const has = (place: number) => findEntryRow(db.$client, idAt(place)) !== undefined;
  if (count === 0 || !has(0) || (has(count - 1) && !has(count))) return ok(null);
  return refuse('id-reused', 'This entry ID was already used for something else.');
}
