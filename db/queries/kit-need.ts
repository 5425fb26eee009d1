import type { Day } from '../../lib/calendar/day';
import { setNeeds } from '../../lib/capability/complete-set';
import { fluidWorkOf } from '../../lib/fluid/permit-fluid';
import type { KitNeed } from '../../lib/kit/judge-item';
import type { Db } from '../open';
import type { LineRow } from './jobs';
import { listBottles } from './kit-stock';
import { listConnections, listMaterials } from './tables';

/** What a kit for a line is judged against, nothing scanned yet; undefined where its size has no table row. */
export function readKitNeed(db: Db, line: LineRow, today: Day): KitNeed | undefined {
  const connections = listConnections(db);
  const connection = connections.find(({ id }) => id === line.connectionId);
  if (connection === undefined) return undefined;
  const material = listMaterials(db).find(({ id }) => id === line.materialId);
  return {
    ...{ today, line, connection, connections, scannedIds: [] },
    roles: setNeeds(line.operations).map(({ role }) => role),
    fluidWork: fluidWorkOf(line, material),
    bottles: listBottles(db),
  };
}
