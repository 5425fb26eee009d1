import type { Permit } from '../../lib/access/permit';
import type { PayloadOf } from '../../lib/ledger/event';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { ReverseEntry } from '../../lib/shop/command-input';
import { derivedId } from '../ledger/derived-id';
import { type EntryRow, findEntryRow } from '../ledger/entry-row';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';

export { correctCut } from './correct-cut';

/**
 * Takes an entry back. Nothing is deleted: the entry and its reversal both stay to be seen. The receipt of a tool and
 * its delivery on an order were entered as one, and go back as one.
 */
export function reverseEntry(
  db: Db,
  permit: Permit<'reverse-entry'>,
  input: ReverseEntry,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, targetId, deviceAtMs, reason } = input;
  return write(db, permit, env, (ledger) => {
    const target = findEntryRow(db.$client, targetId);
    const receipt = target && findReceiptOf(db, target);
    if (receipt !== undefined)
      return refuse(
        'with-receipt',
        `This delivery was entered with ${receipt.subject_id}; take back the receipt of ${receipt.subject_id} instead.`,
      );
    const reversed = ledger.reverse({ id, targetId, deviceAtMs, reason });
    if (!reversed.ok || reversed.value.alreadyRecorded || target?.kind !== 'tool-received') return reversed;
    const delivery = reverseDelivery(ledger, target, { id, deviceAtMs, reason });
    return delivery.ok ? reversed : delivery;
  });
}

function reverseDelivery(
  ledger: Ledger,
  receipt: EntryRow,
  reversal: { readonly id: string; readonly deviceAtMs: number; readonly reason: string },
): Result<unknown, Refusal> {
  const { orderId } = JSON.parse(receipt.payload) as PayloadOf<'tool-received'>;
  if (orderId === null) return ok(null);
  const targetId = derivedId(receipt.id, 'order');
  return ledger.reverse({ ...reversal, id: derivedId(reversal.id, 'order'), targetId });
}

/** The receipt that a delivery was entered with; its note names the tool. */
function findReceiptOf(db: Db, delivery: EntryRow): EntryRow | undefined {
  if (delivery.kind !== 'order-received') return undefined;
  const receipts = statement(
    db.$client,
    `SELECT * FROM entry WHERE subject_kind = 'tool' AND subject_id = ? AND kind = 'tool-received'`,
  ).all(delivery.reason) as EntryRow[];
  return receipts.find((receipt) => derivedId(receipt.id, 'order') === delivery.id);
}
