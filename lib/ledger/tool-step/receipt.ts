import { addUse } from '../edge-use';
import type { Entry, PayloadOf } from '../event';
import { type EdgeRecord, newEdge, type ToolRecord } from '../tool-record';

/** A tool as it first enters the record: in the crib, its first edge carrying what it had cut before. */
export function received(entry: Entry, receipt: PayloadOf<'tool-received'>): ToolRecord {
  const { partId, role, hand, lot, receivedOnDay, opening, dueOnDay, expiresOnDay, openedOnDay, levelMl } =
    receipt;
  return {
    id: entry.subjectId,
    ...{ partId, role, hand, lot, receivedOnDay, opening, dueOnDay, expiresOnDay, openedOnDay, levelMl },
    ...doorState(entry, receipt),
    ...{ holderId: null, jobLineId: null, bench: '', backOnDay: null, kitId: null },
    ...{ reservation: null, pieces: 'none', adjustments: 0, firstOffOwed: false },
    ...{ extendedUntilDay: null, dropsPerMl: null, disposal: null },
    edges: role === 'blade' || role === 'die' ? [openedEdge(receipt)] : [],
    ...{ evidence: [], interval: null, dropped: null },
  };
}

/** Into the crib, or into quarantine where the hand or the certificate is not in order. */
function doorState(entry: Entry, { quarantine }: PayloadOf<'tool-received'>) {
  const { id: stateEntryId, serverAtMs: stateSinceMs } = entry;
  const since = { stateSinceMs, stateEntryId };
  return quarantine === undefined
    ? ({ ...since, state: 'in-crib', stateReason: entry.reason } as const)
    : ({ ...since, state: 'quarantined', stateReason: quarantine } as const);
}

function openedEdge({ opening }: PayloadOf<'tool-received'>): EdgeRecord {
  const edge = newEdge(1);
  if (opening.known !== 'counted') return edge;
  const { connectionId, materialId, ends, exposureMicro } = opening;
  const use = { connectionId, materialId, ends, goodEnds: ends, exposureMicro, dry: false, rework: false };
  return { ...addUse(edge, use), lastUse: null };
}
