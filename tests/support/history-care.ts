import fc from 'fast-check';
import { accountPieces, adjustDie, checkFirstOff, freeTool, reserveTool } from '@/db/commands/care-for-tool';
import type { Actor } from '@/lib/access/actor';
import { may } from './db';
import type { Send } from './history';

/** One thing that happens to a tool between jobs, allowed or not. */
export const careDeed = <T extends string>(toolId: fc.Arbitrary<T>) =>
  fc.record({
    do: fc.constant('care' as const),
    toolId,
    how: fc.constantFrom('reserve', 'free', 'pieces', 'adjust', 'first-off', 'first-off'),
    good: fc.boolean(),
  });

/** What happens to a tool between jobs: kept, freed, its pieces found, adjusted, its first-off gauged. */
export function careSend(
  { toolId, how, good }: { readonly toolId: string; readonly how: string; readonly good: boolean },
  actor: Actor,
  entered: { entryId: string; deviceAtMs: number },
): Send {
  const about = { ...entered, reason: '', toolId };
  const onDay = '2026-03-02';
  switch (how) {
    case 'reserve': {
      const input = { ...about, jobLineId: 'J-1.1', untilDay: good ? '2026-03-09' : '2026-01-01' };
      return (db, env) => reserveTool(db, may('issue-tool', actor), input, env);
    }
    case 'free':
      return (db, env) => freeTool(db, may('issue-tool', actor), about, env);
    case 'pieces':
      return (db, env) =>
        accountPieces(db, may('return-tool', actor), { ...about, allFound: good, where: 'bore' }, env);
    case 'adjust':
      return (db, env) =>
        adjustDie(db, may('read-edge', actor), { ...about, direction: 'closed', amount: '', onDay }, env);
    default: {
      const result = good ? ('pass' as const) : ('fail' as const);
      const input = { ...about, result, onDay, gaugeIds: good ? ['CG-56-1'] : [] };
      return (db, env) => checkFirstOff(db, may('read-edge', actor), input, env);
    }
  }
}
