import type { Permit } from '../../lib/access/permit';
import type { KitRecord } from '../../lib/ledger/kit-history';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { CloseKit, SearchKit } from '../../lib/shop/kit-input';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** Says that items of a kit did not come back, and where they were last seen: a search is open until they are found or given up. */
export function searchKit(
  db: Db,
  permit: Permit<'return-tool'>,
  input: SearchKit,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, kitId: subjectId, toolIds, lastSeen } = input;
  const payload = { toolIds, lastSeen };
  return write(db, permit, env, (ledger) =>
    ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'kit-search-opened', payload }),
  );
}

/**
 * Puts a kit away. Complete only when every item is back and every broken piece accounted for; what is still out must
 * be named as lost, with a reason, by a lead or quality, and goes to lost in the same transaction.
 */
export function closeKit(
  db: Db,
  permit: Permit<'return-tool'>,
  input: CloseKit,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, kitId: subjectId, lostToolIds } = input;
  const how = lostToolIds.length === 0 ? 'complete' : 'lost-approved';
  const payload = { how, lostToolIds } as const;
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(
      id,
      reason,
      (entry) =>
        entry.kind === 'kit-closed' && entry.subjectId === subjectId && holdsAll(entry.payload, payload),
    );
    if (before !== undefined) return before;
    const kit = ledger.find('kit', subjectId);
    if (kit === undefined) return refuse('unknown-kit', 'This kit is not in the record.');
    const ready = checkReady(ledger, kit, lostToolIds);
    if (!ready.ok) return ready;
    if (how === 'lost-approved') {
      const approved = checkApproval(permit.actor.role, reason);
      if (!approved.ok) return approved;
    }
    for (const [place, toolId] of lostToolIds.entries()) {
      const lost = ledger.record({
        id: derivedId(id, String(place)),
        ...{ deviceAtMs, reason, subjectId: toolId, kind: 'tool-moved' },
        payload: { to: 'lost', backOnDay: null },
      });
      if (!lost.ok) return lost;
    }
    return ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'kit-closed', payload });
  });
}

/** What keeps a kit from being put away: items still out that nobody gave up, or pieces not accounted for. */
function checkReady(ledger: Ledger, kit: KitRecord, lostIds: readonly string[]): Result<null, Refusal> {
  const tools = kit.items.flatMap(({ toolId }) => ledger.find('tool', toolId) ?? []);
  const out = tools.filter((tool) => tool.kitId === kit.id).map((tool) => tool.id);
  const missing = out.filter((id) => !lostIds.includes(id));
  if (missing.length > 0)
    return refuse('missing', `Still out: ${missing.join(', ')}. Scan them back, or search for them.`);
  const back = lostIds.find((id) => !out.includes(id));
  if (back !== undefined) return refuse('not-out', `${back} is not out with this kit.`);
  const broken = tools.find((tool) => tool.pieces === 'owed');
  if (broken !== undefined)
    return refuse('pieces', `Account for every piece of ${broken.id} before the kit is put away.`);
  return ok(null);
}

function checkApproval(role: string, reason: string): Result<null, Refusal> {
  if (role !== 'lead' && role !== 'quality')
    return refuse('approval', 'A lead or quality closes a kit with something lost.');
  return reason === '' ? refuse('reason', 'Say where was searched, in a few words.', 'reason') : ok(null);
}
