import type { PayloadOf } from '../ledger/event';
import { ok, type Refusal, type Result, refuse } from '../result';
import type { ReceiveTool } from '../shop/command-input';
import { connectionText } from '../shop/connection-text';
import { type Connection, type Material, type Opening, ReceiptSchema } from '../shop/noun';
import type { Order } from '../shop/order';
import type { Part } from '../shop/part';
import { clashingToolId, isMarkable } from '../shop/tool-id';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import { rowExposureMicro } from '../wear/connection-exposure';

/** What a receipt is decided from. */
export interface ReceiptFacts {
  readonly input: ReceiveTool;
  readonly toolId: string;
  readonly part: Part | undefined;
  /** The connection in which ends already cut were counted, if any were. */
  readonly connection: Connection | undefined;
  /** The material in which they were counted. */
  readonly material: Material | undefined;
  /** The order that it came on, if it came on one. */
  readonly order: Order | undefined;
  readonly existingIds: Iterable<string>;
}

/**
 * Decides whether a tool may enter the record: an ID that can be marked and is like no other, a known part, the hand
 * that the part should have. A wrong hand is refused at the box, before it can reach a bench; where it really is so, and
 * where a certificate is missing or wrong, it is taken into quarantine.
 */
export function decideReceipt(facts: ReceiptFacts): Result<PayloadOf<'tool-received'>, Refusal> {
  const { input, toolId, part } = facts;
  if (!isMarkable(toolId))
    return refuse('mark', 'A tool ID is 2 to 16 letters, digits and single dashes.', 'toolId');
  const clash = clashingToolId(toolId, facts.existingIds);
  if (clash !== undefined)
    return refuse(
      'clash',
      clash === toolId
        ? `${toolId} is already in the record.`
        : `${toolId} reads like ${clash} (O and 0, I and 1 count as one). Choose another ID.`,
      'toolId',
    );
  if (part === undefined)
    return refuse('unknown-part', 'Choose what it is: the shop knows no such part.', 'partId');
  if (part.hand !== input.hand && !input.takeWrongHand) {
    return refuse(
      'hand',
      `Hand mismatch: ${part.name} must be ${part.hand ?? 'without a hand'}, this one is marked ${input.hand ?? 'with none'}. Do not put it away; send it back.`,
      'hand',
    );
  }
  const quarantine = quarantineReason(input, part);
  if (CALIBRATED_ROLES.includes(part.role) && input.dueOnDay === null && quarantine === undefined) {
    return refuse('due', 'A gauge needs the day its calibration runs out.', 'dueOnDay');
  }
  const ordered = checkOrder(facts, part);
  if (!ordered.ok) return ordered;
  const opening = openingOf(facts, part);
  if (!opening.ok) return opening;
  const { lot, receivedOnDay, hand, dueOnDay, expiresOnDay, openedOnDay, levelMl, orderId } = input;
  const receipt = {
    partId: part.id,
    role: part.role,
    hand,
    lot,
    receivedOnDay,
    opening: opening.value,
    dueOnDay,
    expiresOnDay,
    openedOnDay,
    levelMl,
    orderId,
    ...(input.certificate === 'missing' || input.certificate === 'wrong'
      ? { certificate: input.certificate }
      : {}),
    ...(quarantine === undefined ? {} : { quarantine }),
  };
  const parsed = ReceiptSchema.safeParse(receipt);
  return parsed.success
    ? ok(parsed.data)
    : refuse('receipt', parsed.error.issues[0]?.message ?? 'This cannot be received.');
}

/** Why a piece goes into quarantine at the door: the wrong hand, or a certificate that is missing or does not match. */
function quarantineReason({ hand, certificate }: ReceiveTool, part: Part): string | undefined {
  if (hand !== part.hand)
    return `Wrong hand: marked ${hand ?? 'with none'}, must be ${part.hand ?? 'without'}. To be sent back.`;
  if (certificate === 'missing') return 'No certificate came with it.';
  return certificate === 'wrong' ? 'Its certificate is not the right one.' : undefined;
}

function checkOrder({ input, order }: ReceiptFacts, part: Part): Result<null, Refusal> {
  if (input.orderId === null) return ok(null);
  if (order === undefined)
    return refuse('unknown-order', `No order ${input.orderId} is in the record.`, 'orderId');
  if (order.partId !== part.id)
    return refuse('order-part', `Order ${order.id} is for another part than ${part.name}.`, 'orderId');
  return ok(null);
}

function openingOf({ input, connection, material }: ReceiptFacts, part: Part): Result<Opening, Refusal> {
  const { opening } = input;
  if (opening.known !== 'counted') return ok(opening);
  if (part.role !== 'blade' && part.role !== 'die')
    return refuse('opening', 'Only blades and dies are counted in ends.', 'opening');
  if (connection === undefined)
    return refuse('unknown-connection', 'Say in which size and service its ends were counted.', 'opening');
  if (!part.fitsConnectionIds.includes(connection.id))
    return refuse('fit', `${part.name} does not serve ${connectionText(connection)}.`, 'opening');
  if (material === undefined)
    return refuse('unknown-material', 'Say in which material its ends were counted.', 'opening');
  const operation = part.role === 'blade' ? 'cone' : 'thread';
  const exposure = rowExposureMicro({ operation, connection, lengthMm: null, ends: opening.ends });
  return exposure.ok ? ok({ ...opening, exposureMicro: exposure.value }) : exposure;
}
