import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { idSizeText } from '../../lib/shop/id-size-text';
import type { Part } from '../../lib/shop/noun';
import type { CountIn } from '../../lib/shop/set-up-input';
import { suggestToolId } from '../../lib/shop/suggest-tool-id';
import type { Env, Ledger } from '../ledger/ledger';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { receiveInto } from './receive-tool';

/**
 * Takes the first day's count into the record: so many of each part, each given a short ID to be marked with. All or none.
 * Gives the IDs, so that they can be put on labels.
 */
export function countIn(
  db: Db,
  permit: Permit<'receive-tool'>,
  input: CountIn,
  env: Env,
): Result<{ readonly toolIds: readonly string[] }, Refusal> {
  return write(db, permit, env, (ledger) => {
    const before = countedBefore(db, input.entryId);
    if (before.length > 0) return ok({ toolIds: before });
    const rows = statement(db.$client, 'SELECT id FROM tool').all() as { id: string }[];
    const existingIds = rows.map((row) => row.id);
    const toolIds: string[] = [];
    for (const counted of input.counts) {
      const part = ledger.find('part', counted.partId);
      if (part === undefined)
        return refuse('unknown-part', 'One of the things counted is not a part of this shop.');
      for (let i = 0; i < counted.count; i++) {
        const toolId = suggestToolId({ role: part.role, sizeText: sizeTextOf(ledger, part), existingIds });
        const entryId = `${input.entryId}.${toolIds.length}`;
        const received = receiveInto(db, ledger, receiptOf(input, { counted, part, toolId, entryId }));
        if (!received.ok) return received;
        existingIds.push(toolId);
        toolIds.push(toolId);
      }
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

/** The size in a tool's short ID, where its part is for one size only. */
function sizeTextOf(ledger: Ledger, part: Part): string | undefined {
  return idSizeText(part.fitsConnectionIds.flatMap((id) => ledger.find('connection', id) ?? []));
}

/** The IDs that this very count was given before, when it is sent twice. */
function countedBefore(db: Db, entryId: string): string[] {
  const sql = `SELECT subject_id AS id FROM entry WHERE kind = 'tool-received' AND id GLOB ? ORDER BY seq`;
  return (statement(db.$client, sql).all(`${entryId}.[0-9]*`) as { id: string }[]).map((row) => row.id);
}
