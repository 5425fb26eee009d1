import { timeZone } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import type { Db } from '@/db/open';
import { listEntriesAbout } from '@/db/queries/entries';
import { HistoryPanel } from './history-panel';

const HISTORY_LIMIT = 200;

/** Everything that was entered about a tool, newest first. */
export function ToolHistory({
  db,
  toolId,
  today,
}: {
  readonly db: Db;
  readonly toolId: string;
  readonly today: string;
}) {
  return (
    <HistoryPanel
      entries={listEntriesAbout(db, { kind: 'tool', id: toolId, limit: HISTORY_LIMIT })}
      names={shopNames()}
      timeZone={timeZone()}
      today={today}
    />
  );
}
