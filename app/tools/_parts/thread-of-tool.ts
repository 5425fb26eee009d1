import 'server-only';
import type { Db } from '@/db/open';
import { listConnections, listParts } from '@/db/queries/tables';
import { findTool } from '@/db/queries/tools';
import type { CutThread } from '@/lib/reading/typed-finding';
import { threadOfPart } from '@/lib/shop/part-thread';
import { rationalInToMm } from '@/lib/units/inch-mm';

/** The thread that a tool cuts, where the shop's table says. */
export function threadOfTool(db: Db, typedToolId: string): CutThread | undefined {
  const partId = findTool(db, typedToolId)?.partId;
  const part = listParts(db).find(({ id }) => id === partId);
  const row = part && threadOfPart(part, listConnections(db));
  return row && { majorMm: rationalInToMm({ num: row.odNum, den: row.odDen }), tpi: row.tpi };
}
