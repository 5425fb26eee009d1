import { currentEdge } from '../../../lib/ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../../../lib/result';
import type { EdgeThen } from '../../../lib/shop/acceptance';
import { connectionText } from '../../../lib/shop/connection-text';
import type { Connection } from '../../../lib/shop/noun';
import { type EdgeKind, HAND_LABEL, ROLE_LABEL } from '../../../lib/shop/vocabulary';
import type { Ledger } from '../../ledger/ledger';

interface EdgeAsked {
  readonly toolId: string | null;
  readonly role: EdgeKind;
  readonly connection: Connection;
}

/** What the die or blade had cut when the ends were looked at; null where none is named. It must be one that can have cut them. */
export function edgeThen(
  ledger: Ledger,
  { toolId, role, connection }: EdgeAsked,
): Result<EdgeThen | null, Refusal> {
  if (toolId === null) return ok(null);
  const field = role === 'die' ? 'dieId' : 'bladeId';
  const tool = ledger.find('tool', toolId);
  if (tool === undefined)
    return refuse('unknown-tool', `No ${role} ${toolId} is in the record. Check the mark.`, field);
  const edge = currentEdge(tool);
  if (tool.role !== role || edge === undefined)
    return refuse('edge-role', `${tool.id} is a ${ROLE_LABEL[tool.role]}, not a ${role}.`, field);
  const part = ledger.find('part', tool.partId);
  if (part !== undefined && !part.fitsConnectionIds.includes(connection.id))
    return refuse('edge-size', `${tool.id} does not cut ${connectionText(connection)}.`, field);
  if (tool.hand !== null && tool.hand !== connection.hand)
    return refuse(
      'edge-hand',
      `HAND MISMATCH: ${tool.id} is ${HAND_LABEL[tool.hand]}, the thread is ${HAND_LABEL[connection.hand]}. Set it aside, and gauge every end cut with it since it was issued.`,
      field,
    );
  const sum = (pick: 'ends' | 'exposureMicro') => edge.use.reduce((total, use) => total + use[pick], 0);
  return ok({ edgeNo: edge.edgeNo, ends: sum('ends'), exposureMicro: sum('exposureMicro') });
}
