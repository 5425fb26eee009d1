import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { idSizeText } from '../../lib/shop/id-size-text';
import type { Part } from '../../lib/shop/part';
import type { CountIn } from '../../lib/shop/set-up-input';
import { nextToolId } from '../../lib/shop/suggest-tool-id';
import { toolKey } from '../../lib/shop/tool-id';
import { derivedId } from '../ledger/derived-id';
import { findEntryRow } from '../ledger/entry-row';
import type { Env, Ledger } from '../ledger/ledger';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { receiveInto } from './receive-tool';

/**
 * Takes the first day's count into the record: so many of each part, each given a short ID to be marked with. All or none.
 * Gives the IDs, so that they can be put on labels; sent twice it counts once and gives the same IDs again.
 */
export function countIn(
  db: Db,
  permit: Permit<'receive-tool'>,
  input: CountIn,
  env: Env,
): Result<{ readonly toolIds: readonly string[] }, Refusal> {
  return write(db, permit, env, (ledger) => {
    const before = countedBefore(db, input.entryId);
    const pieces = input.counts.flatMap((counted) => Array.from({ length: counted.count }, () => counted));
    if (before.length > 0 && before.length !== pieces.length)
      return refuse('id-reused', 'This count was already entered with other figures. Enter it as a new one.');
    const rows = statement(db.$client, 'SELECT id FROM tool').all() as { id: string }[];
    const existingKeys = new Set(rows.map((row) => toolKey(row.id)));
    const toolIds: string[] = [];
    for (const counted of pieces) {
      const part = ledger.find('part', counted.partId);
      if (part === undefined)
        return refuse('unknown-part', 'One of the things counted is not a part of this shop.');
      const toolId = before[toolIds.length] ?? newToolId(ledger, part, existingKeys);
      const entryId = derivedId(input.entryId, String(toolIds.length));
      const received = receiveInto(db, ledger, receiptOf(input, { counted, part, toolId, entryId }));
      if (!received.ok) return received;
      existingKeys.add(toolKey(toolId));
      toolIds.push(toolId);
    }
    return ok({ toolIds });
  });
}

interface Counted {
  readonly counted: CountIn['counts'][number];
  readonly part: Part;
  readonly toolId: string;
  readonly entryId: string;
}

function receiptOf(input: CountIn, { counted, part, toolId, entryId }: Counted) {
  const { opening, dueOnDay, levelMl } = counted;
  return {
    ...{ entryId, toolId, dueOnDay, levelMl, deviceAtMs: input.deviceAtMs },
    reason: 'opening count',
    partId: part.id,
    hand: part.hand,
    lot: '',
    receivedOnDay: input.onDay,
    opening: { known: opening },
    expiresOnDay: null,
    openedOnDay: null,
    orderId: null,
  };
}

/** A short ID, with the size where its part is for one size only. */
function newToolId(ledger: Ledger, part: Part, existingKeys: ReadonlySet<string>): string {
  const sizeText = idSizeText(part.fitsConnectionIds.flatMap((id) => ledger.find('connection', id) ?? []));
  return nextToolId({ role: part.role, sizeText, existingKeys });
}

/** The IDs that this very count was given before, when it is sent twice. */
function countedBefore(db: Db, entryId: string): string[] {
  const toolIds: string[] = [];
  for (;;) {
    const row = findEntryRow(db.$client, derivedId(entryId, String(toolIds.length)));
    if (row === undefined) return toolIds;
    toolIds.push(row.subject_id);
  }
}
