import { dayNumber, dayOfMs } from '../calendar/day';
import { ok, type Refusal, type Result } from '../result';
import type { LogCut } from '../shop/command-input';
import type { Cut } from '../shop/cut';
import { toolKey } from '../shop/tool-id';
import type { CutRow } from './read-cut-row';
import { findConnection, findMaterial, type ShopIndex } from './shop-index';

/** A row of the cut log without what the device adds to it. */
export type CutFactsOfRow = Omit<LogCut, 'entryId' | 'deviceAtMs' | 'reason' | 'cutAtMs'> & {
  readonly cutAtMs: number;
};

const DAY_MS = 86_400_000;

/**
 * Turns a cuts row into a row of the cut log, by the shop's tables. The moment is noon UTC of its day. `jobLineOf` finds
 * the job line that a job number means; what it does not know is kept as written.
 */
export function resolveCut(
  index: ShopIndex,
  row: CutRow,
  jobLineOf: (job: string, connectionId: string, materialId: string) => string | undefined,
): Result<CutFactsOfRow, Refusal> {
  const connection = findConnection(index, row.size, row.service);
  if (!connection.ok) return connection;
  const material = findMaterial(index, row.material);
  if (!material.ok) return material;
  const [connectionId, materialId] = [connection.value.id, material.value.id];
  const jobLineId = row.job === '' ? null : (jobLineOf(row.job, connectionId, materialId) ?? row.job);
  const { toolId, heat, ends, goodEnds, dry, rework } = row;
  const fluidId = row.fluid === '' ? null : row.fluid;
  const threadLength = row.threadLength && { typed: row.threadLength.typed, unit: row.threadLength.unit };
  return ok({
    ...{ toolId, connectionId, materialId, heat, ends, goodEnds, threadLength, dry, rework, jobLineId },
    fluidId,
    rejects: row.rejects.map((reject) => ({ ...reject })),
    cutAtMs: noonMs(row.cutOnDay),
  });
}

/**
 * Noon UTC of a day: where a file gives only the day, the moment that most shops' clocks put on that day too.
 * @example noonMs('1970-01-02') // => 129600000
 */
export function noonMs(day: string): number {
  return dayNumber(day) * DAY_MS + DAY_MS / 2;
}

/** Whether an entry in the record says what a row with its ID says. The moment counts by its UTC day. */
export function saysTheSame(cut: Cut, facts: CutFactsOfRow, row: CutRow): boolean {
  const job = row.job === '' ? cut.jobLineId === null : sameJob(cut.jobLineId, row.job);
  const length = cut.operation === 'cone' || (row.threadLength?.lengthMm ?? null) === cut.threadLengthMm;
  const keys = ['connectionId', 'materialId', 'heat', 'ends', 'goodEnds', 'dry', 'rework'] as const;
  return (
    job &&
    length &&
    toolKey(cut.fluidId ?? '') === toolKey(row.fluid) &&
    keys.every((key) => cut[key] === facts[key]) &&
    dayOfMs(cut.cutAtMs) === row.cutOnDay &&
    rejectText(cut.rejects) === rejectText(row.rejects)
  );
}

/** A job line named by its job alone is the same as the line that it was found to be. */
function sameJob(kept: string | null, written: string): boolean {
  return kept === written || (kept?.startsWith(`${written}.`) ?? false);
}

function rejectText(rejects: CutRow['rejects']): string {
  const counts = new Map<string, number>();
  for (const { cause, count } of rejects) counts.set(cause, (counts.get(cause) ?? 0) + count);
  return JSON.stringify([...counts].sort());
}
