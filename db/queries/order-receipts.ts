import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** One piece that came on an order. */
export interface OrderReceipt {
  readonly toolId: string;
  readonly onDay: string;
  readonly lot: string;
  /** Why it went into quarantine at the door; null where it went into the crib. */
  readonly quarantine: string | null;
}

const RECEIPTS = `SELECT e.subject_id AS toolId, json_extract(e.payload, '$.receivedOnDay') AS onDay,
    json_extract(e.payload, '$.lot') AS lot, json_extract(e.payload, '$.quarantine') AS quarantine
  FROM entry e
  WHERE e.kind = 'tool-received' AND json_extract(e.payload, '$.orderId') = ?
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)
  ORDER BY e.seq`;

/** The pieces that came on an order, those set aside at the door among them, in the order of the ledger. */
export function listOrderReceipts(db: Db, orderId: string): OrderReceipt[] {
  return statement(db.$client, RECEIPTS).all(orderId) as OrderReceipt[];
}
