import { acceptEnds } from '../../db/commands/accept-ends';
import { shipJob } from '../../db/commands/ship-job';
import type { Db } from '../../db/open';
import type { Permit } from '../../lib/access/permit';
import { dayOfMs } from '../../lib/calendar/day';
import { ok, type Refusal, type Result } from '../../lib/result';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { Role } from '../../lib/shop/vocabulary';
import { type Act, act } from './act';
import type { Calendar } from './calendar';
import type { CutRow } from './cutting';
import { gaugeReady, lastBlade, openBottle } from './gauge-room';
import { type DemoLook, LOOK_ROLES, lookInput } from './looks';
import { actorOf } from './people';
import { RECALLED_JOBS, recallActs, recalledLooks, remadeLook } from './recall-story';

const MINUTE_MS = 60_000;
const SHIPPED_DAYS_LATER = 20;
const SHIPPED_DAYS_LATER_RECALLED = 75;

/**
 * The ends of the closed jobs as they were looked at: a first-off, the rest of each half day, a last-off, and those that
 * were refused. Ends whose ring is at the laboratory wait for it, capped. Jobs leave the house some weeks after.
 */
export function acceptanceActs(calendar: Calendar, rows: readonly CutRow[]): Act[] {
  const waiting: Waiting[] = [];
  const looked = looksOf(rows);
  const acts = [...recalledLooks(looked), ...remadeLook(calendar, looked)].map((look) =>
    lookAct(look, waiting),
  );
  const last = act(
    { atMs: calendar.now - MINUTE_MS, by: actorOf('quality-1'), name: 'gauge what waited' },
    'accept-ends',
    (db, permit, _entered, env) => gaugeAll(db, permit, waiting, env.nowMs),
  );
  return [...acts, last, ...recallActs(calendar, looked), ...shipActs(calendar, rows)];
}

/** Every row's ends as they were looked at, numbered along their line. */
function looksOf(rows: readonly CutRow[]): DemoLook[] {
  const counted = new Map<string, number>();
  const lastRow = new Map(rows.map((row) => [row.job.id, row]));
  const newest = rows.at(-1);
  return rows.flatMap((row) => {
    const before = counted.get(row.job.id) ?? 0;
    counted.set(row.job.id, before + row.goodEnds);
    const isLast = lastRow.get(row.job.id) === row;
    return looksOfRow(row, { before, isLast, isNewest: row === newest });
  });
}

function looksOfRow(
  row: CutRow,
  { before, isLast, isNewest }: { before: number; isLast: boolean; isNewest: boolean },
): DemoLook[] {
  const first = before === 0 && row.goodEnds > 0 ? 1 : 0;
  const lastOff = isLast && row.goodEnds > first ? 1 : 0;
  const parts = [
    { checkKind: 'first-off', endCount: first, minutesLater: 5 },
    { checkKind: 'in-process', endCount: row.goodEnds - first - lastOff, minutesLater: 30 },
    { checkKind: 'last-off', endCount: lastOff, minutesLater: 40 },
  ] as const;
  let endNo = before + 1;
  const good = parts
    .filter(({ endCount }) => endCount > 0)
    .map((part): DemoLook => {
      const look = {
        ...part,
        row,
        cause: null,
        firstEndNo: endNo,
        unrecorded: isNewest && part.checkKind === 'last-off',
      };
      endNo += part.endCount;
      return look;
    });
  const refused = row.rejects.map(
    ({ cause, count }): DemoLook => ({
      ...{ row, cause, endCount: count, checkKind: 'in-process', firstEndNo: null },
      ...{ minutesLater: 25, unrecorded: false },
    }),
  );
  return [...good, ...refused];
}

/** A look that was to be made, under the ID it will be entered with. */
interface Waiting {
  readonly look: DemoLook;
  readonly entryId: string;
}

function lookAct(look: DemoLook, waiting: Waiting[]): Act {
  const { row, checkKind, minutesLater, cause, firstEndNo } = look;
  const name = `look ${row.job.id} ${row.offset} ${row.slot} ${row.dieId} ${checkKind} ${cause ?? firstEndNo}`;
  return act(
    { atMs: row.threadAtMs + minutesLater * MINUTE_MS, by: actorOf(row.tech), name },
    'accept-ends',
    (db, permit, entered, env) => {
      waiting.push({ look, entryId: entered.entryId });
      return gaugeAll(db, permit, waiting, env.nowMs);
    },
  );
}

/** Looks at everything that waits and for which the gauges lie ready; the rest waits on. */
function gaugeAll(
  db: Db,
  permit: Permit<'accept-ends'>,
  waiting: Waiting[],
  nowMs: number,
): Result<null, Refusal> {
  const onDay = dayOfMs(nowMs);
  for (const { look, entryId } of waiting.splice(0)) {
    const gaugeIds = gaugesReady(db, look, onDay);
    if (gaugeIds === undefined) {
      waiting.push({ look, entryId });
      continue;
    }
    const { job } = look.row;
    const bladeId = lastBlade(db, jobLineId(job.id, 1));
    const fluidId = openBottle(db, job.materialId);
    const seen = lookInput(look, { gaugeIds, bladeId, fluidId });
    const entered = { entryId, deviceAtMs: nowMs, reason: '' };
    const done = acceptEnds(db, permit, { ...seen, ...entered, gaugedOnDay: onDay }, { nowMs });
    if (!done.ok) return done;
  }
  return ok(null);
}

function gaugesReady(db: Db, { row, unrecorded }: DemoLook, onDay: string): Map<Role, string> | undefined {
  const ready = new Map<Role, string>();
  if (unrecorded) return ready;
  for (const role of LOOK_ROLES) {
    const id = gaugeReady(db, { connectionId: row.job.connectionId, role, onDay });
    if (id === undefined) return undefined;
    ready.set(role, id);
  }
  return ready;
}

/** Jobs go out some weeks after their last end; those of the recall when it was closed. The newest are still here. */
function shipActs(calendar: Calendar, rows: readonly CutRow[]): Act[] {
  const lastOffset = new Map<string, number>();
  for (const { job, offset } of rows)
    lastOffset.set(job.id, Math.max(offset, lastOffset.get(job.id) ?? offset));
  return [...lastOffset].flatMap(([jobId, offset]) => {
    const later = RECALLED_JOBS.includes(jobId) ? SHIPPED_DAYS_LATER_RECALLED : SHIPPED_DAYS_LATER;
    const shipped = offset + later;
    if (shipped >= 0) return [];
    const when = { atMs: calendar.at(shipped, 960), by: actorOf('lead-1'), name: `ship ${jobId}` };
    return act(when, 'ship-job', (db, permit, entered, env) =>
      shipJob(db, permit, { ...entered, jobId, onDay: calendar.day(shipped) }, env),
    );
  });
}
