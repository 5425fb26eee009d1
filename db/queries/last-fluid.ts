import { statement } from '../ledger/statements';
import type { Db } from '../open';

const LAST_OF = (column: 'person_id' | 'tool_id') =>
  `SELECT fluid_id AS fluidId FROM cut WHERE ${column} = ? AND fluid_id IS NOT NULL AND reversed = 0
    ORDER BY seq DESC LIMIT 1`;

/** The bottle that a person last logged a row with, else the one that the tool was last used with; null where neither is known. */
export function lastFluidUsed(
  db: Db,
  { personId, toolId }: { personId: string | undefined; toolId: string },
): string | null {
  const last = (column: 'person_id' | 'tool_id', id: string): string | undefined =>
    (statement(db.$client, LAST_OF(column)).get(id) as { fluidId: string } | undefined)?.fluidId;
  const ofPerson = personId === undefined ? undefined : last('person_id', personId);
  return ofPerson ?? last('tool_id', toolId) ?? null;
}
