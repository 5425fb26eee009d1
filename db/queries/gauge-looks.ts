import type { GaugeLook } from '../../lib/recall/suspect-looks';
import type { Role } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

const LOOKS = `SELECT a.id AS acceptanceId, a.end_count AS endCount, a.decision, g.verdict, a.gauged_at_ms AS gaugedAtMs,
    a.gauged_on_day AS gaugedOnDay
  FROM acceptance_gauge g JOIN acceptance a ON a.id = g.acceptance_id
  WHERE g.tool_id = ? AND g.verdict <> 'not-used'
  ORDER BY a.gauged_at_ms, a.id, g.position`;

/** Every look at ends in which a gauge had a say, oldest first. A look that names it twice counts by its worse word. */
export function looksWithGauge(db: Db, gaugeId: string): GaugeLook[] {
  const looks = new Map<string, GaugeLook>();
  for (const row of statement(db.$client, LOOKS).all(gaugeId) as GaugeLook[]) {
    const kept = looks.get(row.acceptanceId);
    if (kept === undefined || row.verdict === 'fail') looks.set(row.acceptanceId, row);
  }
  return [...looks.values()];
}

/** A gauge found out by a calibration or a check, for which nobody has opened a recall. */
export interface OpenFinding {
  readonly gaugeId: string;
  readonly role: Role;
  readonly entryId: string;
  readonly kind: 'calibration' | 'interim';
  readonly onDay: string;
}

const FINDINGS = `SELECT e.tool_id AS gaugeId, t.role, e.entry_id AS entryId, e.kind, e.on_day AS onDay
  FROM gauge_evidence e JOIN tool t ON t.id = e.tool_id
  WHERE (e.as_found = 'out' OR e.as_left = 'out')
    AND NOT EXISTS (SELECT 1 FROM recall r WHERE r.gauge_id = e.tool_id AND r.data ->> 'foundEntryId' = e.entry_id)
  ORDER BY e.on_day DESC, e.tool_id`;

/** Gauges found out whose ends nobody has looked at yet, the last found first. */
export function listOpenFindings(db: Db, gaugeId?: string): OpenFinding[] {
  const all = statement(db.$client, FINDINGS).all() as OpenFinding[];
  return gaugeId === undefined ? all : all.filter((finding) => finding.gaugeId === gaugeId);
}
