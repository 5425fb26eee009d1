import 'server-only';
import { today } from '@/app/_server/clock';
import type { Db } from '@/db/open';
import { findLine, type LineRow } from '@/db/queries/jobs';
import { listConnections, listMaterials } from '@/db/queries/tables';
import { setNeeds } from '@/lib/capability/complete-set';
import type { KitNeed } from '@/lib/kit/judge-item';

/** What a kit for a line is judged against; undefined where the line is not open or its size has no table row. */
export function kitNeed(
  db: Db,
  lineId: string,
  scannedIds: readonly string[] = [],
): { need: KitNeed; line: LineRow } | undefined {
  const line = findLine(db, lineId);
  const connections = listConnections(db);
  const connection = connections.find(({ id }) => id === line?.connectionId);
  if (line === undefined || line.jobStatus !== 'open' || connection === undefined) return undefined;
  const material = listMaterials(db).find(({ id }) => id === line.materialId);
  const roles = setNeeds(line.operations).map(({ role }) => role);
  const materialName = material?.name ?? line.materialId;
  return { need: { today: today(), line, connection, materialName, roles, scannedIds, connections }, line };
}
