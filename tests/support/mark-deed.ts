import fc from 'fast-check';
import { markTool } from '@/db/commands/mark-tool';
import type { Env, Recorded } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import type { Result } from '@/lib/result';
import { MarkToolInput } from '@/lib/shop/mark-input';
import { may } from './db';

/** A tool of a random history marked again: read back right, read back as another, or not at all. */
export const markDeed = fc.record({
  do: fc.constant('mark' as const),
  toolId: fc.constantFrom('D-56-01', 'G-56-GO-1'),
  how: fc.constantFrom('label', 'etched'),
  codeKind: fc.constantFrom('data-matrix', null),
  readAs: fc.constantFrom('', 'D-56-O1', 'G-56-GO-1'),
});
type MarkDeed = typeof markDeed extends fc.Arbitrary<infer D> ? D : never;

/** The deed as a command with its content fixed, to be sent as often as one likes. */
export function markSend(
  deed: MarkDeed,
  actor: Actor,
  entered: { entryId: string; deviceAtMs: number },
): (db: Db, env: Env) => Result<Recorded> {
  const { toolId, how, codeKind, readAs } = deed;
  const input = MarkToolInput.parse({
    ...entered,
    toolId,
    how,
    codeKind,
    readAs,
    reason: '',
    onDay: '2026-03-02',
  });
  return (db, env) => markTool(db, may('mark-tool', actor), input, env);
}
