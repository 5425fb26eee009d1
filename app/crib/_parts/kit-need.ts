import 'server-only';
import { today } from '@/app/_server/clock';
import type { Db } from '@/db/open';
import { findLine, type LineRow } from '@/db/queries/jobs';
import { readKitNeed } from '@/db/queries/kit-need';
import type { KitNeed } from '@/lib/kit/judge-item';

/** What a kit for a line is judged against; undefined where the line is not open or its size has no table row. */
export function kitNeed(db: Db, lineId: string): { need: KitNeed; line: LineRow } | undefined {
  const line = findLine(db, lineId);
  const need = line?.jobStatus === 'open' ? readKitNeed(db, line, today()) : undefined;
  return line === undefined || need === undefined ? undefined : { need, line };
}
