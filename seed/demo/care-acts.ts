import { adjustDie, checkFirstOff } from '../../db/commands/care-for-tool';
import { issueKit } from '../../db/commands/issue-kit';
import { closeKit, searchKit } from '../../db/commands/keep-kit';
import type { Db } from '../../db/open';
import { invariant } from '../../lib/invariant';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { Role } from '../../lib/shop/vocabulary';
import { type Act, act } from './act';
import type { Calendar } from './calendar';
import { giveBack } from './crib-acts';
import type { CutRow } from './cutting';
import { gaugeReady } from './gauge-room';
import { actorOf, type PersonId } from './people';

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
/** Month 2: a split die that was followed with its screw twice before it was retired. */
const ADJUSTED_DIE = 'D-25-07';
/** A brush and a deburring tool went out together; the brush did not come back with the kit. */
const SEARCHED_KIT = { toolIds: ['DBR-3', 'BRS-3'], missingId: 'BRS-3', latestOffset: -25 } as const;

/** What tools were owed between jobs: a die adjusted and gauged again, and an item that was searched for and found. */
export function careActs(calendar: Calendar, rows: readonly CutRow[]): Act[] {
  return [...adjustments(calendar, rows), ...searchedKit(rows)];
}

/** A first-off that passed, with the gauges of that kind that lie ready in date. */
export function firstOff(
  deed: { readonly atMs: number; readonly by: PersonId; readonly toolId: string; readonly mark: string },
  wanted: { readonly connectionId: string; readonly roles: readonly Role[]; readonly onDay: string },
): Act {
  const { atMs, toolId } = deed;
  const when = { atMs, by: actorOf(deed.by), name: `first-off ${toolId} ${deed.mark}` };
  return act(when, 'read-edge', (db, permit, entered, env) => {
    const gaugeIds = readyGauges(db, wanted);
    const passed = { result: 'pass' as const, onDay: wanted.onDay, gaugeIds };
    return checkFirstOff(db, permit, { ...entered, ...passed, toolId }, env);
  });
}

function readyGauges(
  db: Db,
  { connectionId, roles, onDay }: { connectionId: string; roles: readonly Role[]; onDay: string },
): string[] {
  return roles.flatMap((role) => gaugeReady(db, { connectionId, role, onDay }) ?? []);
}

function adjustments(calendar: Calendar, rows: readonly CutRow[]): Act[] {
  const own = rows
    .filter(({ dieId }) => dieId === ADJUSTED_DIE)
    .sort((a, b) => a.threadAtMs - b.threadAtMs)
    .slice(-3, -1);
  return own.flatMap((row, at) => {
    const atMs = row.threadAtMs + 12 * MINUTE_MS;
    const onDay = calendar.day(row.offset);
    const said = { direction: 'closed', amount: 'an eighth of a turn of the screw', onDay } as const;
    const when = { atMs, by: actorOf(row.tech), name: `adjust ${ADJUSTED_DIE} ${at}`, reason: 'GO tight.' };
    return [
      act(when, 'read-edge', (db, permit, entered, env) =>
        adjustDie(db, permit, { ...entered, ...said, toolId: ADJUSTED_DIE }, env),
      ),
      firstOff(
        { atMs: atMs + 10 * MINUTE_MS, by: row.tech, toolId: ADJUSTED_DIE, mark: `adjusted ${at}` },
        { connectionId: row.job.connectionId, roles: ['go-ring', 'not-go-ring'], onDay },
      ),
    ];
  });
}

/** Out with a kit, missing at its return, found two days later, and the kit put away complete. */
function searchedKit(rows: readonly CutRow[]): Act[] {
  const row = rows.findLast(({ offset }) => offset <= SEARCHED_KIT.latestOffset);
  invariant(row !== undefined, 'the story has work before the search');
  const { toolIds, missingId } = SEARCHED_KIT;
  const by = 'crib-2' as const;
  const at = (minutes: number) => row.threadAtMs + minutes * MINUTE_MS;
  const kit = { jobLineId: jobLineId(row.job.id, 1), toPersonId: row.tech, bench: 'B3' };
  const name = 'kit that was searched for';
  const found = { atMs: at(60) + 2 * DAY_MS, by, toolId: missingId, reason: 'Found behind the tube rack.' };
  return [
    act({ atMs: at(-45), by: actorOf(by), name }, 'issue-tool', (db, permit, entered, env) =>
      issueKit(db, permit, { ...entered, ...kit, shown: {}, toolIds: [...toolIds] }, env),
    ),
    ...toolIds
      .filter((toolId) => toolId !== missingId)
      .map((toolId) => giveBack({ atMs: at(45), by, toolId, mark: 'kit' })),
    act(
      { atMs: at(50), by: actorOf(by), name: 'search for the brush' },
      'return-tool',
      (db, permit, entered, env, idOf) =>
        searchKit(
          db,
          permit,
          { ...entered, kitId: idOf(name), toolIds: [missingId], lastSeen: 'B3, with the tube rack' },
          env,
        ),
    ),
    giveBack({ ...found, mark: 'found' }),
    act(
      { atMs: found.atMs + MINUTE_MS, by: actorOf(by), name: 'put the searched kit away' },
      'return-tool',
      (db, permit, entered, env, idOf) =>
        closeKit(db, permit, { ...entered, kitId: idOf(name), lostToolIds: [] }, env),
    ),
  ];
}
