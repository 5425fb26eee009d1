import type { AcceptedEnds } from '../../lib/gauge/ends-at-stake';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

/** Ends that were gauged with one gauge on one day, accepted or refused: each of them wore it. */
export interface GaugeUse {
  readonly toolId: string;
  readonly onDay: string;
  readonly ends: number;
}

const BY_DAY = `SELECT g.tool_id AS toolId, a.gauged_on_day AS onDay, SUM(a.end_count) AS ends
  FROM acceptance_gauge g JOIN acceptance a ON a.id = g.acceptance_id
  WHERE g.tool_id = ? AND g.verdict <> 'not-used'
  GROUP BY a.gauged_on_day ORDER BY a.gauged_on_day`;

/** What one gauge was used on, day by day, oldest first. */
export function listGaugeUse(db: Db, toolId: string): GaugeUse[] {
  return statement(db.$client, BY_DAY).all(toolId) as GaugeUse[];
}

const SINCE_CALIBRATION = `SELECT g.tool_id AS toolId, SUM(a.end_count) AS ends
  FROM acceptance_gauge g JOIN acceptance a ON a.id = g.acceptance_id
  LEFT JOIN (SELECT tool_id, MAX(on_day) AS on_day FROM gauge_evidence
             WHERE kind = 'calibration' GROUP BY tool_id) c ON c.tool_id = g.tool_id
  WHERE g.verdict <> 'not-used' AND (c.on_day IS NULL OR a.gauged_on_day > c.on_day)
  GROUP BY g.tool_id`;

/** Ends gauged with each gauge since the day of its last calibration; with one that never had one, all of them. */
export function endsByGauge(db: Db): Map<string, number> {
  const rows = statement(db.$client, SINCE_CALIBRATION).all() as { toolId: string; ends: number }[];
  return new Map(rows.map(({ toolId, ends }) => [toolId, ends]));
}

const ACCEPTED = `SELECT a.gauged_on_day AS onDay, a.gauged_at_ms AS atMs, a.end_count AS ends
  FROM acceptance_gauge g JOIN acceptance a ON a.id = g.acceptance_id
  WHERE g.tool_id = ? AND g.verdict <> 'not-used' AND a.decision = 'accepted'`;

/** Ends accepted with one gauge, look by look: what is to be looked at again should it turn out to be off. */
export function listAcceptedWith(db: Db, toolId: string): AcceptedEnds[] {
  return statement(db.$client, ACCEPTED).all(toolId) as AcceptedEnds[];
}
