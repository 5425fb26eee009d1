import { type Refusal, refuse } from '../result';
import type { Receipt } from '../shop/noun';
import { findPart } from './find-part';
import type { ToolRow } from './read-tool-row';
import { resolveOpening } from './resolve-tool';
import type { ShopIndex } from './shop-index';

/** A tool in the record: its receipt, and the days and level that have moved since. */
export interface KnownTool {
  readonly receipt: Receipt;
  readonly now: Pick<Receipt, 'dueOnDay' | 'expiresOnDay' | 'openedOnDay' | 'levelMl'>;
}

/**
 * What a tools row claims otherwise than the record has it, or undefined where they agree. A file adds tools; it does
 * not change them. Empty cells claim nothing; days and level may be those of the receipt or those of now; the state and
 * the note are not compared, since they move on.
 */
export function toolDisagreement(index: ShopIndex, row: ToolRow, known: KnownTool): Refusal | undefined {
  const { receipt, now } = known;
  const part = index.parts.get(receipt.partId);
  const asKnown = findPart(index, { ...row, partId: row.partId === '' ? receipt.partId : row.partId });
  if (part === undefined || !asKnown.ok || asKnown.value.id !== part.id)
    return differs(row, 'kind', `as ${part?.name ?? receipt.partId}`);
  if (row.hand !== null && row.hand !== receipt.hand)
    return differs(row, 'hand', `as ${receipt.hand ?? 'without a hand'}`);
  if (row.lot !== '' && row.lot !== receipt.lot)
    return differs(row, 'lot', `with lot ${receipt.lot || 'not given'}`);
  if (row.receivedOnDay !== null && row.receivedOnDay !== receipt.receivedOnDay)
    return differs(row, 'received_on', `received on ${receipt.receivedOnDay}`);
  const moving = [
    ['calibration_due', 'dueOnDay'],
    ['shelf_life', 'expiresOnDay'],
    ['opened_on', 'openedOnDay'],
    ['level_ml', 'levelMl'],
  ] as const;
  for (const [column, key] of moving) {
    const claimed = row[key];
    if (claimed !== null && claimed !== receipt[key] && claimed !== now[key])
      return differs(row, column, `with ${String(now[key] ?? 'nothing')} here`);
  }
  if (row.opening === null) return undefined;
  const opening = resolveOpening(index, row, part);
  if (!opening.ok) return opening.refusal;
  return JSON.stringify(opening.value) === JSON.stringify(withoutExposure(receipt.opening))
    ? undefined
    : differs(row, 'opening', 'with another opening count');
}

function withoutExposure(opening: Receipt['opening']): unknown {
  if (opening.known !== 'counted') return { known: opening.known };
  const { known, connectionId, materialId, ends } = opening;
  return { known, connectionId, materialId, ends };
}

function differs(row: ToolRow, column: string, how: string): Refusal {
  const sentence = `${row.toolId} is already in the record ${how}. A file adds tools; change this one on its own page.`;
  return refuse('differs', sentence, column).refusal;
}
