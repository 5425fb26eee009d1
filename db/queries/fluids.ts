import { asc } from 'drizzle-orm';
import type { FluidLog, FluidUseRow, LevelReading } from '../../lib/fluid/fluid-log';
import { plannedDropsPerEnd } from '../../lib/fluid/use-per-end';
import type { FluidLot } from '../../lib/shop/fluid-lot';
import type { CutOperation } from '../../lib/shop/vocabulary';
import { fromMicro } from '../../lib/units/micro';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { fluidLot } from '../schema';

/** What is known of the lots of fluid, by product and lot. */
export function listFluidLots(db: Db): FluidLot[] {
  const rows = db.select().from(fluidLot).orderBy(asc(fluidLot.partId), asc(fluidLot.lot)).all();
  return rows.map((row) => row.data);
}

/** Not taken back by a later entry. */
const STANDING = 'NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)';

/** Levels as received and as read, in the order of the ledger. */
const LEVELS = `SELECT e.subject_id AS toolId,
    COALESCE(json_extract(e.payload, '$.onDay'), json_extract(e.payload, '$.receivedOnDay')) AS onDay,
    json_extract(e.payload, '$.levelMl') AS levelMl
  FROM entry e JOIN tool t ON t.id = e.subject_id AND t.role = 'fluid'
  WHERE e.subject_kind = 'tool' AND e.kind IN ('tool-received', 'fluid-level-read')
    AND json_extract(e.payload, '$.levelMl') IS NOT NULL AND ${STANDING} ORDER BY e.seq`;

/** The cut log by day, material, bottle and turns to the end: cut dry takes no fluid. */
const ROWS = `SELECT date(c.cut_at_ms / 1000, 'unixepoch') AS onDay, c.material_id AS materialId, c.operation,
    json_extract(e.payload, '$.fluidId') AS fluidId,
    CASE c.operation WHEN 'thread' THEN c.exposure_micro / c.ends ELSE 0 END AS turnsMicro, SUM(c.ends) AS ends
  FROM cut c JOIN entry e ON e.id = c.entry_id WHERE c.reversed = 0 AND c.dry = 0
  GROUP BY 1, 2, 3, 4, 5 ORDER BY 1, 2, 3, 4, 5`;

interface RawUse {
  readonly onDay: string;
  readonly materialId: string;
  readonly operation: CutOperation;
  readonly fluidId: string | null;
  readonly turnsMicro: number;
  readonly ends: number;
}

/** What the shop's own use of fluid is learnt from: every level read, and what was cut, in planned drops. */
export function readFluidLog(db: Db): FluidLog {
  const levels = statement(db.$client, LEVELS).all() as LevelReading[];
  const rows = statement(db.$client, ROWS).all() as RawUse[];
  return { levels, rows: levels.length === 0 && rows.length === 0 ? [] : rows.map(rowOfUse) };
}

function rowOfUse({ onDay, materialId, operation, fluidId, turnsMicro, ends }: RawUse): FluidUseRow {
  const perEnd = plannedDropsPerEnd({ cone: operation === 'cone', turns: fromMicro(turnsMicro) });
  return { onDay, materialId, fluidId, drops: perEnd * ends };
}

/** A job that a bottle went out to, or that was cut with it, with the last day of that. */
export interface FluidJobUse {
  readonly jobLineId: string;
  readonly onDay: string;
  readonly how: 'issued' | 'cut';
}

/** The last jobs that a bottle was used on, newest first: as information when it turns out to be past its life. */
export function listFluidJobs(db: Db, toolId: string, limit = 12): FluidJobUse[] {
  const sql = `SELECT jobLineId, MAX(onDay) AS onDay, how FROM (
      SELECT json_extract(e.payload, '$.jobLineId') AS jobLineId,
        COALESCE(json_extract(e.payload, '$.onDay'), date(e.server_at_ms / 1000, 'unixepoch')) AS onDay,
        'issued' AS how
      FROM entry e WHERE e.subject_kind = 'tool' AND e.subject_id = ? AND e.kind = 'tool-issued' AND ${STANDING}
      UNION ALL
      SELECT c.job_line_id, date(c.cut_at_ms / 1000, 'unixepoch'), 'cut' FROM cut c JOIN entry e ON e.id = c.entry_id
      WHERE c.reversed = 0 AND json_extract(e.payload, '$.fluidId') = ?)
    WHERE jobLineId IS NOT NULL GROUP BY jobLineId, how ORDER BY onDay DESC, jobLineId LIMIT ?`;
  return statement(db.$client, sql).all(toolId, toolId, limit) as FluidJobUse[];
}
