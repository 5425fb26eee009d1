import { ok, type Refusal, type Result, refuse } from '../result';
import type { ReceiveTool } from '../shop/command-input';
import type { Part } from '../shop/part';
import { findPart } from './find-part';
import type { ToolRow } from './read-tool-row';
import { findConnection, findMaterial, type ShopIndex } from './shop-index';

/** A receipt without what the device adds to it. */
export type ToolReceipt = Omit<ReceiveTool, 'entryId' | 'deviceAtMs' | 'reason'>;

/** Turns a tools row into the receipt of a tool, by the shop's tables. `onDay` stands in for a day received left empty. */
export function resolveTool(index: ShopIndex, row: ToolRow, onDay: string): Result<ToolReceipt, Refusal> {
  const part = findPart(index, row);
  if (!part.ok) return part;
  if (row.hand === null && part.value.hand !== null)
    return refuse(
      'hand',
      'This kind of tool has a hand. Write LH or RH, as marked on the tool itself.',
      'hand',
    );
  const opening = resolveOpening(index, row, part.value);
  if (!opening.ok) return opening;
  const { toolId, hand, lot, dueOnDay, expiresOnDay, openedOnDay, levelMl } = row;
  const rest = { dueOnDay, expiresOnDay, openedOnDay, levelMl, orderId: null };
  return ok({
    ...{ toolId, partId: part.value.id, hand, lot, opening: opening.value },
    ...{ receivedOnDay: row.receivedOnDay ?? onDay, ...rest },
  });
}

/** What a tool had cut before: an empty cell is unknown for a blade or a die, and new for what has no edge. */
export function resolveOpening(
  index: ShopIndex,
  row: ToolRow,
  part: Part,
): Result<ReceiveTool['opening'], Refusal> {
  const hasEdge = part.role === 'blade' || part.role === 'die';
  const { opening } = row;
  if (opening === null) return ok({ known: hasEdge ? 'unknown' : 'new' });
  if (typeof opening === 'string') return ok({ known: opening });
  if (!hasEdge) return refuse('opening', 'Only blades and dies are counted in ends.', 'opening');
  const service = row.openingService ?? row.service;
  if (row.size === null || service === null)
    return refuse(
      'opening',
      `Say in which size and service the ${opening} ends were cut.`,
      'opening_service',
    );
  if (row.openingMaterial === '')
    return refuse('opening', `Say in which material the ${opening} ends were cut.`, 'opening_material');
  const connection = findConnection(index, row.size, service);
  if (!connection.ok) return connection;
  if (!part.fitsConnectionIds.includes(connection.value.id))
    return refuse(
      'opening',
      `${part.id} does not serve the service in which its ends are counted.`,
      'opening_service',
    );
  const material = findMaterial(index, row.openingMaterial, 'opening_material');
  if (!material.ok) return material;
  return ok({
    known: 'counted',
    connectionId: connection.value.id,
    materialId: material.value.id,
    ends: opening,
  });
}
