import type { Gauging } from '../../lib/end-costs/gauge-costs';
import { CALIBRATED_ROLES } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { listParts } from './tables';
import { listTools } from './tools';

const CALIBRATIONS = `SELECT tool_id AS toolId, COUNT(*) AS times FROM gauge_evidence
  WHERE kind = 'calibration'
    AND on_day >= (SELECT MIN(gauged_on_day) FROM acceptance WHERE decision = 'accepted')
  GROUP BY tool_id`;

const LOOKS = `SELECT g.tool_id AS toolId, a.connection_id AS connectionId, SUM(a.end_count) AS ends
  FROM acceptance_gauge g JOIN acceptance a ON a.id = g.acceptance_id
  WHERE a.decision = 'accepted' AND g.verdict <> 'not-used' GROUP BY g.tool_id, a.connection_id`;

const ACCEPTED = `SELECT connection_id AS connectionId, SUM(end_count) AS ends FROM acceptance
  WHERE decision = 'accepted' AND regauges_id IS NULL GROUP BY connection_id`;

/** Calibrations and accepted ends since the first end was accepted: what gauging costs an end rests on them. */
export function readGauging(db: Db): Gauging {
  const times = rowsOf<{ toolId: string; times: number }>(db, CALIBRATIONS);
  const counted = new Map(times.map((row) => [row.toolId, row.times]));
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const accepted = rowsOf<{ connectionId: string; ends: number }>(db, ACCEPTED);
  return {
    calibrations: listTools(db, { roles: CALIBRATED_ROLES }).map(({ id: toolId, role, partId }) => ({
      ...{ toolId, role, calibrations: counted.get(toolId) ?? 0 },
      fitsConnectionIds: parts.get(partId)?.fitsConnectionIds ?? [],
    })),
    looks: rowsOf(db, LOOKS),
    accepted: new Map(accepted.map(({ connectionId, ends }) => [connectionId, ends])),
  };
}

function rowsOf<T>(db: Db, sql: string): T[] {
  return statement(db.$client, sql).all() as T[];
}
