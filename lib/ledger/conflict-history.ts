import { ok, type Refusal, type Result, refuse } from '../result';
import type { Conflict } from '../shop/conflict';
import type { Entry } from './event';

/** A conflict with what became of it. */
export interface ConflictRecord extends Conflict {
  readonly raisedAtMs: number;
  readonly raisedById: string;
  readonly settled: 'entered' | 'dropped' | null;
  readonly note: string;
}

/** One more entry about a conflict: raised once, settled once. */
export function evolveConflict(
  conflict: ConflictRecord | undefined,
  entry: Entry,
): Result<ConflictRecord, Refusal> {
  if (entry.kind === 'conflict-raised') {
    if (conflict !== undefined) return refuse('exists', 'This conflict is already in the record.');
    const raised = { raisedAtMs: entry.serverAtMs, raisedById: entry.actorId };
    return ok({ ...entry.payload, ...raised, settled: null, note: '' });
  }
  if (conflict === undefined) return refuse('unknown-conflict', 'This conflict is not in the record.');
  if (entry.kind !== 'conflict-settled')
    return refuse('kind', `An entry "${entry.kind}" cannot be about a conflict.`);
  if (conflict.settled !== null) return refuse('settled', 'Somebody has already settled this.');
  return ok({ ...conflict, settled: entry.payload.how, note: entry.payload.note });
}
