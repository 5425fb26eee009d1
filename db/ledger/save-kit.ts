import type { Database } from 'better-sqlite3';
import type { ConflictRecord } from '../../lib/ledger/conflict-history';
import type { CountRecord } from '../../lib/ledger/count-history';
import type { KitRecord } from '../../lib/ledger/kit-history';
import { upsert } from './statements';

/** A kit as its history says it stands. */
export function saveKit(client: Database, id: string, kit: KitRecord): void {
  upsert(client, 'kit', 'id', {
    id,
    job_line_id: kit.jobLineId,
    to_person_id: kit.toPersonId,
    bench: kit.bench,
    items: JSON.stringify(kit.items),
    issued_at_ms: kit.issuedAtMs,
    status: kit.status,
    missing_tool_ids: JSON.stringify(kit.missingToolIds),
    last_seen: kit.lastSeen,
    closed_at_ms: kit.closedAtMs,
    lost_tool_ids: JSON.stringify(kit.lostToolIds),
  });
}

/** A stock-take as it was entered. */
export function saveCount(client: Database, id: string, count: CountRecord): void {
  upsert(client, 'stock_count', 'id', {
    id,
    scope: count.scope,
    expected: count.expected,
    found: count.found,
    variances: JSON.stringify(count.variances),
    counted_at_ms: count.countedAtMs,
    counted_by_id: count.countedById,
  });
}

/** What a bench entered and the record could not take. */
export function saveConflict(client: Database, id: string, conflict: ConflictRecord): void {
  upsert(client, 'conflict', 'id', {
    id,
    tool_id: conflict.toolId,
    what: conflict.what,
    sentence: conflict.sentence,
    sent: conflict.sent,
    raised_at_ms: conflict.raisedAtMs,
    raised_by_id: conflict.raisedById,
    settled: conflict.settled,
    note: conflict.note,
  });
}
