import { ok, type Refusal, type Result, refuse } from '../result';
import type { Part } from '../shop/part';
import { ROLE_LABEL } from '../shop/vocabulary';
import type { Entry } from './event';

/** One more entry in a part's history: it replaces the part, but never its kind, which the tools received of it share. */
export function evolvePart(part: Part | undefined, entry: Entry): Result<Part, Refusal> {
  if (entry.kind !== 'part-set') return refuse('kind', `An entry "${entry.kind}" cannot be about a part.`);
  if (part !== undefined && part.role !== entry.payload.role)
    return refuse(
      'role',
      `${part.name} is entered as a ${ROLE_LABEL[part.role]}; enter a new part for a ${ROLE_LABEL[entry.payload.role]}.`,
      'role',
    );
  return ok(entry.payload);
}
