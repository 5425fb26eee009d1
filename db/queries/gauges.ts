import { asc, eq, isNotNull } from 'drizzle-orm';
import type { GaugeEvidence } from '../../lib/gauge/evidence';
import type { GaugeUseFacts } from '../../lib/outlook/shop-facts';
import type { GaugeInterval } from '../../lib/shop/gauge-entry';
import { CALIBRATED_ROLES } from '../../lib/shop/vocabulary';
import type { Db } from '../open';
import { attachment, gauge, gaugeEvidence } from '../schema';
import { endsByGauge } from './gauge-use';
import { listTools, type ToolRow } from './tools';

/** A gauge as the register shows it. */
export interface GaugeRow extends ToolRow {
  readonly interval: GaugeInterval | null;
  readonly dropped: { readonly onDay: string; readonly atMs: number } | null;
  /** Ends gauged with it since its last calibration. */
  readonly endsSince: number;
  /** Its last calibration, where there was one. */
  readonly calibratedOnDay: string | null;
  readonly laboratory: string | null;
}

/** Every gauge that is still the shop's: scrapped ones left out, lost ones kept so that they are looked for. */
export function listGauges(db: Db): GaugeRow[] {
  const kept = new Map(
    db
      .select()
      .from(gauge)
      .all()
      .map((row) => [row.toolId, row]),
  );
  const ends = endsByGauge(db);
  const last = lastCalibrations(db);
  return listTools(db, { roles: CALIBRATED_ROLES })
    .filter(({ state }) => state !== 'scrapped')
    .map((tool) => ({
      ...tool,
      ...intervalAndKnock(kept.get(tool.id)),
      endsSince: ends.get(tool.id) ?? 0,
      calibratedOnDay: last.get(tool.id)?.onDay ?? null,
      laboratory: last.get(tool.id)?.calibration?.laboratory ?? null,
    }));
}

/** The gauges that are due by ends as well as by day, with what they have had since their last calibration. */
export function listGaugesDueByEnds(db: Db): GaugeUseFacts[] {
  const rows = db
    .select({ toolId: gauge.toolId, intervalEnds: gauge.intervalEnds })
    .from(gauge)
    .where(isNotNull(gauge.intervalEnds))
    .all();
  const ends = rows.length === 0 ? new Map<string, number>() : endsByGauge(db);
  return rows.map(({ toolId, intervalEnds }) => ({
    toolId,
    intervalEnds: intervalEnds ?? 0,
    endsSince: ends.get(toolId) ?? 0,
  }));
}

/** What says whether a gauge was good, in the order of the days; on one day in the order of entry. */
export function listEvidence(db: Db, toolId: string): GaugeEvidence[] {
  const rows = db
    .select()
    .from(gaugeEvidence)
    .where(eq(gaugeEvidence.toolId, toolId))
    .orderBy(asc(gaugeEvidence.onDay), asc(gaugeEvidence.no))
    .all();
  return rows.map(({ toolId: _tool, no: _no, ...evidence }) => evidence);
}

/** A gauge's interval and standing knock. */
export function findGaugeKeeping(db: Db, toolId: string): Pick<GaugeRow, 'interval' | 'dropped'> {
  return intervalAndKnock(db.select().from(gauge).where(eq(gauge.toolId, toolId)).get());
}

/** The file of a calibration, by its hash. */
export function findAttachment(db: Db, sha256: string) {
  return db.select().from(attachment).where(eq(attachment.sha256, sha256)).get();
}

/** The name that a file was filed under, the last where it was filed twice. */
export function findFileName(db: Db, sha256: string): string | undefined {
  const rows = db.select({ file: gaugeEvidence.file }).from(gaugeEvidence).all();
  return rows.findLast(({ file }) => file?.sha256 === sha256)?.file?.name;
}

function intervalAndKnock(
  row: typeof gauge.$inferSelect | undefined,
): Pick<GaugeRow, 'interval' | 'dropped'> {
  if (row === undefined) return { interval: null, dropped: null };
  const { intervalDays, intervalEnds, intervalMethod: method, droppedOnDay, droppedAtMs } = row;
  return {
    interval: method === null ? null : { intervalDays, intervalEnds, method },
    dropped:
      droppedOnDay === null || droppedAtMs === null ? null : { onDay: droppedOnDay, atMs: droppedAtMs },
  };
}

function lastCalibrations(db: Db) {
  const rows = db
    .select({
      toolId: gaugeEvidence.toolId,
      onDay: gaugeEvidence.onDay,
      calibration: gaugeEvidence.calibration,
    })
    .from(gaugeEvidence)
    .where(eq(gaugeEvidence.kind, 'calibration'))
    .orderBy(asc(gaugeEvidence.onDay), asc(gaugeEvidence.no))
    .all();
  return new Map(rows.map((row) => [row.toolId, row]));
}
