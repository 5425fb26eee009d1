import { statement } from '../../db/ledger/statements';
import type { Db } from '../../db/open';
import type { Role } from '../../lib/shop/vocabulary';

/** What lies ready at a moment of the story, as the crib would look it up. */

interface Wanted {
  readonly connectionId: string;
  readonly role: Role;
  readonly onDay: string;
}

/** The first gauge of a kind for a size that is in the house and in date; undefined while all of them are away. */
export function gaugeReady(db: Db, { connectionId, role, onDay }: Wanted): string | undefined {
  const row = statement(
    db.$client,
    `SELECT t.id FROM tool t JOIN part_fit f ON f.part_id = t.part_id
     WHERE f.connection_id = ? AND t.role = ? AND t.state IN ('in-crib', 'issued') AND t.due_on_day >= ?
     ORDER BY t.id LIMIT 1`,
  ).get(connectionId, role, onDay) as { id: string } | undefined;
  return row?.id;
}

/** The blade that last coned for a line. */
export function lastBlade(db: Db, jobLineId: string): string | null {
  const row = statement(
    db.$client,
    `SELECT tool_id AS id FROM cut WHERE job_line_id = ? AND operation = 'cone' AND reversed = 0
     ORDER BY seq DESC LIMIT 1`,
  ).get(jobLineId) as { id: string } | undefined;
  return row?.id ?? null;
}

/** The bottle that was opened last and may be used on the material. */
export function openBottle(db: Db, materialId: string): string | null {
  const row = statement(
    db.$client,
    `SELECT t.id FROM tool t JOIN part p ON p.id = t.part_id
     WHERE t.role = 'fluid' AND t.opened_on_day IS NOT NULL AND t.state IN ('in-crib', 'issued')
       AND (p.permits_all_materials = 1 OR EXISTS (
         SELECT 1 FROM part_permit m WHERE m.part_id = p.id AND m.material_id = ?))
     ORDER BY t.opened_on_day DESC, t.id LIMIT 1`,
  ).get(materialId) as { id: string } | undefined;
  return row?.id ?? null;
}

/** The calibration by which a gauge was found out. */
export function failedCalibration(db: Db, gaugeId: string): string | null {
  const row = statement(
    db.$client,
    `SELECT id FROM entry WHERE subject_id = ? AND kind = 'gauge-calibrated' AND payload ->> 'result' = 'fail'
     ORDER BY seq DESC LIMIT 1`,
  ).get(gaugeId) as { id: string } | undefined;
  return row?.id ?? null;
}
