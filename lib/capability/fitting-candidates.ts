import type { Role } from '../shop/vocabulary';
import type { Candidate } from './candidates';

/** The candidates of one role that fit one connection. */
export type FindFitting = (role: Role, connectionId: string) => readonly Candidate[];

/** Sorts candidates by role and connection once, so that a line only ever touches what fits it. */
export function indexCandidates(candidates: readonly Candidate[]): FindFitting {
  const bySize = new Map<string, Candidate[]>();
  const universal = new Map<Role, Candidate[]>();
  const joined = new Map<string, readonly Candidate[]>();
  for (const candidate of candidates) {
    if (candidate.fits === 'all') push(universal, candidate.role, candidate);
    else for (const id of new Set(candidate.fits)) push(bySize, key(candidate.role, id), candidate);
  }
  return (role, connectionId) => {
    const at = key(role, connectionId);
    const known = joined.get(at);
    if (known !== undefined) return known;
    const found = [...(bySize.get(at) ?? []), ...(universal.get(role) ?? [])];
    joined.set(at, found);
    return found;
  };
}

function key(role: Role, connectionId: string): string {
  return `${role}|${connectionId}`;
}

function push<K>(lists: Map<K, Candidate[]>, at: K, candidate: Candidate): void {
  const list = lists.get(at);
  if (list === undefined) lists.set(at, [candidate]);
  else list.push(candidate);
}
