import { issueKit } from '@/db/commands/issue-kit';
import { closeKit, searchKit } from '@/db/commands/keep-kit';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import * as input from '@/lib/shop/kit-input';
import { ENV, entered, HIGH, may } from './db';

export const LEE: Actor = { personId: 'lee', name: 'Lee Hart', role: 'lead' };

/** A job of ten threads of the test shop's size, due on Friday 2026-03-06. */
export const THREADS_JOB = {
  id: 'J-7',
  title: 'Ten threads',
  lines: [
    {
      ...{ lineNo: 1, connectionId: HIGH.id, materialId: '316', heat: '', ends: 10, operations: ['thread'] },
      ...{ startOnDay: '2026-03-02', dueOnDay: '2026-03-06', value: 'ordinary' },
    },
  ],
};

type Fields = Readonly<Record<string, unknown>>;

/** The kit commands as the counter calls them, as Robin unless said otherwise. */
export function kitSender(db: Db, actor?: Actor) {
  return {
    issueKit: (toolIds: readonly string[], over: Fields = {}) =>
      issueKit(
        db,
        may('issue-tool', actor),
        input.IssueKitInput.parse({
          ...entered(),
          ...{ jobLineId: 'J-7.1', toPersonId: 'ash', bench: '4', toolIds },
          ...over,
        }),
        ENV,
      ),
    search: (kitId: string, toolIds: readonly string[]) =>
      searchKit(
        db,
        may('return-tool', actor),
        input.SearchKitInput.parse({ ...entered(), kitId, toolIds, lastSeen: 'bench 4' }),
        ENV,
      ),
    close: (kitId: string, lostToolIds: readonly string[] = [], over: Fields = {}) =>
      closeKit(
        db,
        may('return-tool', actor),
        input.CloseKitInput.parse({ ...entered(), kitId, lostToolIds, ...over }),
        ENV,
      ),
  };
}
