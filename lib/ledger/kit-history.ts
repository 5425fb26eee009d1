import { ok, type Refusal, type Result, refuse } from '../result';
import type { Kit } from '../shop/kit';
import type { Entry } from './event';

/** A kit with what became of it. Which items are still out stands on the tools themselves. */
export interface KitRecord extends Kit {
  readonly id: string;
  readonly issuedAtMs: number;
  readonly status: 'out' | 'complete' | 'lost-approved';
  /** Items that are being searched for, with where they were last seen; empty while no search is open. */
  readonly missingToolIds: readonly string[];
  readonly lastSeen: string;
  readonly closedAtMs: number | null;
  readonly lostToolIds: readonly string[];
}

/** One more entry in a kit's history: issued once, searched for, closed once. */
export function evolveKit(kit: KitRecord | undefined, entry: Entry): Result<KitRecord, Refusal> {
  if (entry.kind === 'kit-issued') {
    if (kit !== undefined) return refuse('exists', 'This kit is already in the record.');
    return ok({
      ...entry.payload,
      id: entry.subjectId,
      issuedAtMs: entry.serverAtMs,
      ...{ status: 'out', missingToolIds: [], lastSeen: '', closedAtMs: null, lostToolIds: [] },
    });
  }
  if (kit === undefined) return refuse('unknown-kit', 'This kit is not in the record.');
  if (kit.status !== 'out') return refuse('closed', 'This kit was already put away.');
  if (entry.kind === 'kit-search-opened') return searched(kit, entry.payload);
  if (entry.kind !== 'kit-closed') return refuse('kind', `An entry "${entry.kind}" cannot be about a kit.`);
  const { how, lostToolIds } = entry.payload;
  if ((how === 'complete') !== (lostToolIds.length === 0))
    return refuse('lost', 'A kit is complete when nothing of it is lost, and only then.');
  return ok({ ...kit, status: how, lostToolIds, closedAtMs: entry.serverAtMs, missingToolIds: [] });
}

function searched(
  kit: KitRecord,
  { toolIds, lastSeen }: { toolIds: string[]; lastSeen: string },
): Result<KitRecord, Refusal> {
  const stranger = toolIds.find((id) => !kit.items.some(({ toolId }) => toolId === id));
  return stranger === undefined
    ? ok({ ...kit, missingToolIds: toolIds, lastSeen })
    : refuse('item', `${stranger} is not of this kit.`);
}
