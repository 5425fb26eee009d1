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
 * Takes an entry back. Nothing is deleted: the entry and its reversal both stay to be seen. What was entered as one goes
 * back as one: the receipt of a tool and its delivery on an order, a kit and its items, and with the first of several
 * tools that came back together the others (each of those can still be taken back by itself).
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
    const companions = reverseCompanions(db, ledger, target, { id, deviceAtMs, reason });
    if (!companions.ok) return companions;
    const reversed = ledger.reverse({ id, targetId, deviceAtMs, reason });
    if (!reversed.ok || reversed.value.alreadyRecorded || target?.kind !== 'tool-received') return reversed;
    const delivery = reverseDelivery(ledger, target, { id, deviceAtMs, reason });
    return delivery.ok ? reversed : delivery;
  });
}

/** The list in an entry that numbers the entries about tools written with it in one transaction: they go back with it. */
const COMPANIONS_IN: Readonly<Record<string, string>> = {
  'kit-issued': 'items',
  'kit-closed': 'lostToolIds',
  'stock-counted': 'variances',
};

/** How many places its companions were numbered by; a place may have none. */
function companionsOf(db: Db, { id, kind, payload }: EntryRow): number {
  if (kind === 'tool-returned') return returnedWith(db, id);
  const list = COMPANIONS_IN[kind];
  const content = JSON.parse(payload) as Record<string, readonly unknown[]>;
  return list === undefined ? 0 : (content[list]?.length ?? 0);
}

/** Of several tools that came back at once the first bears the list's ID, and the others are numbered from 1 without a gap. */
function returnedWith(db: Db, firstId: string): number {
  let place = 1;
  while (findEntryRow(db.$client, derivedId(firstId, String(place)))?.kind === 'tool-returned') place++;
  return place;
}

/** Takes back, last first, what a command wrote beside the target: the items of a kit go back with their kit. */
function reverseCompanions(
  db: Db,
  ledger: Ledger,
  target: EntryRow | undefined,
  reversal: { readonly id: string; readonly deviceAtMs: number; readonly reason: string },
): Result<unknown, Refusal> {
  if (target === undefined) return ok(null);
  const standing = (targetId: string) =>
    findEntryRow(db.$client, targetId) !== undefined &&
    statement(db.$client, 'SELECT 1 FROM entry WHERE reverses_id = ?').get(targetId) === undefined;
  for (let place = companionsOf(db, target) - 1; place >= 0; place--) {
    const targetId = derivedId(target.id, String(place));
    if (!standing(targetId)) continue;
    const reversed = ledger.reverse({ ...reversal, id: derivedId(reversal.id, String(place)), targetId });
    if (!reversed.ok)
      return target.kind === 'tool-returned' ? cameBackWith(db, targetId, reversed) : reversed;
  }
  return ok(null);
}

/** The same refusal, naming the tool that it is about: it is not the one whose return was to be taken back. */
function cameBackWith(
  db: Db,
  entryId: string,
  { refusal }: { readonly refusal: Refusal },
): Result<never, Refusal> {
  const toolId = findEntryRow(db.$client, entryId)?.subject_id;
  return refuse(refusal.code, `${toolId} came back in the same list. ${refusal.sentence}`, refusal.field);
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
