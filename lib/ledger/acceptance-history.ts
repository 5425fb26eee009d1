import { ok, type Refusal, type Result, refuse } from '../result';
import type { Acceptance } from '../shop/acceptance';
import type { Entry } from './event';

/** One look at one or more ends, with who looked and its place in the ledger. */
export interface AcceptanceRecord extends Acceptance {
  readonly id: string;
  readonly personId: string;
  /** When the server took it in: later than the gauging where the device was cut off meanwhile. */
  readonly recordedAtMs: number;
}

/** The one entry in an acceptance's history. A mistake is taken back, and the ends are gauged again. */
export function evolveAcceptance(
  acceptance: AcceptanceRecord | undefined,
  entry: Entry,
): Result<AcceptanceRecord, Refusal> {
  if (entry.kind !== 'ends-accepted')
    return refuse('kind', `An entry "${entry.kind}" cannot be about accepted ends.`);
  if (acceptance !== undefined) return refuse('exists', 'These ends are already in the record.');
  const { endCount, endMarks } = entry.payload;
  if (endMarks.length > 0 && endMarks.length !== endCount)
    return refuse('marks', `${endMarks.length} marks for ${endCount} ends.`, 'endMarks');
  if (new Set(endMarks).size !== endMarks.length)
    return refuse('marks', 'The same mark stands twice among these ends.', 'endMarks');
  const { subjectId: id, actorId: personId, serverAtMs: recordedAtMs } = entry;
  return ok({ ...entry.payload, id, personId, recordedAtMs });
}
