import type { Database } from 'better-sqlite3';
import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import type { RecallRecord } from '../../lib/ledger/recall-history';
import { type DisposalSum, sumDisposals } from '../../lib/recall/disposal-sum';
import { bit, clear, insert, upsert } from './statements';

/** Ends looked at together, what each gauge said, and the marks they bear. */
export function saveAcceptance(client: Database, id: string, row: AcceptanceRecord): void {
  clear(client, 'acceptance_gauge', 'acceptance_id', id);
  clear(client, 'acceptance_mark', 'acceptance_id', id);
  upsert(client, 'acceptance', 'id', {
    id,
    job_line_id: row.jobLineId,
    connection_id: row.connectionId,
    material_id: row.materialId,
    heat: row.heat,
    first_end_no: row.firstEndNo,
    end_count: row.endCount,
    check_kind: row.checkKind,
    decision: row.decision,
    cause: row.cause,
    gauges_complete: bit(row.gaugesMissing.length === 0),
    regauges_id: row.regaugesId,
    person_id: row.personId,
    gauged_at_ms: row.gaugedAtMs,
    gauged_on_day: row.gaugedOnDay,
    recorded_at_ms: row.recordedAtMs,
    data: JSON.stringify(row),
  });
  row.gauges.forEach(({ toolId, role, verdict, turns }, at) => {
    const gauge = { acceptance_id: id, position: at + 1, tool_id: toolId, role, verdict, turns };
    insert(client, 'acceptance_gauge', gauge);
  });
  row.endMarks.forEach((mark, at) => {
    insert(client, 'acceptance_mark', { acceptance_id: id, position: at + 1, mark });
  });
}

/** A recall, and how it stands with the ends of each acceptance. */
export function saveRecall(client: Database, id: string, recall: RecallRecord): void {
  clear(client, 'recall_suspect', 'recall_id', id);
  upsert(client, 'recall', 'id', {
    id,
    gauge_id: recall.gaugeId,
    status: recall.status,
    direction: recall.direction,
    window_from_ms: recall.windowFromMs,
    window_to_ms: recall.windowToMs,
    opened_at_ms: recall.openedAtMs,
    data: JSON.stringify(recall),
  });
  const sums = sumDisposals(recall);
  for (const [acceptanceId, sum] of sums) insert(client, 'recall_suspect', suspectRow(id, acceptanceId, sum));
}

function suspectRow(recallId: string, acceptanceId: string, { endCount, open, good, gone }: DisposalSum) {
  return {
    ...{ recall_id: recallId, acceptance_id: acceptanceId, end_count: endCount },
    ...{ open_ends: open, good_ends: good, gone_ends: gone },
  };
}
