import { disposeSuspects } from '../../db/commands/dispose-suspect';
import { checkGauge } from '../../db/commands/keep-gauge';
import { closeRecall } from '../../db/commands/keep-recall';
import { openRecall } from '../../db/commands/open-recall';
import type { Db } from '../../db/open';
import { findAcceptances } from '../../db/queries/acceptance';
import { findRecall } from '../../db/queries/recalls';
import { invariant } from '../../lib/invariant';
import type { DisposeSuspects } from '../../lib/shop/acceptance-input';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { Suspect } from '../../lib/shop/recall';
import { type Act, act } from './act';
import { type Calendar, monthDay } from './calendar';
import { failedCalibration } from './gauge-room';
import type { DemoLook } from './looks';
import { actorOf } from './people';

/** Month 13: the 3/8 cone gauge was found out, and the ends accepted with it since its last check were looked at again. */
const GAUGE = 'CG-38-1';
const RECALL = `${GAUGE}.R1`;
const SIZE = '3-8-medium';
const FOUND_OFFSET = monthDay(13, 10);
/** Ends accepted between the last check and the finding; how many were blued, and how many made again. */
export const SUSPECT_ENDS = 141;
const BLUED_ENDS = 96;
const REMADE_ENDS = 2;
/** Jobs of those ends that were kept in the house until it was closed. */
export const RECALLED_JOBS: readonly string[] = ['J-016', 'J-019'];
const MINUTE_MS = 60_000;
const CHECK_MINUTES = 20;

/**
 * Cuts the look in two during which the gauge was last checked, so that as many ends as the story tells of were accepted
 * after the check.
 */
export function recalledLooks(looks: readonly DemoLook[]): DemoLook[] {
  const at = indexOfCheck(looks);
  return looks.flatMap((look, index) => (index === at.index ? split(look, at.endsAfter) : [look]));
}

/** The look during which the gauge was checked, and how many of its ends came after. */
function indexOfCheck(looks: readonly DemoLook[]): { readonly index: number; readonly endsAfter: number } {
  let left = SUSPECT_ENDS;
  for (let index = looks.length - 1; index >= 0; index--) {
    const look = looks[index];
    if (look === undefined || !isConed(look)) continue;
    if (look.endCount >= left) return { index, endsAfter: left };
    left -= look.endCount;
  }
  return { index: -1, endsAfter: 0 };
}

function isConed({ row, cause }: DemoLook): boolean {
  return cause === null && row.job.connectionId === SIZE && row.offset < FOUND_OFFSET;
}

function split(look: DemoLook, endsAfter: number): DemoLook[] {
  const before = look.endCount - endsAfter;
  const later = { ...look, endCount: endsAfter, minutesLater: look.minutesLater + 2 * CHECK_MINUTES };
  if (before === 0 || look.firstEndNo === null) return [later];
  return [
    { ...look, endCount: before },
    { ...later, firstEndNo: look.firstEndNo + before },
  ];
}

/** The ends that were made again, looked at on the day they were. */
export function remadeLook(calendar: Calendar, looks: readonly DemoLook[]): DemoLook[] {
  const first = looks[indexOfCheck(looks).index];
  if (first === undefined) return [];
  const minutesLater = (calendar.at(FOUND_OFFSET + 16, 700) - first.row.threadAtMs) / MINUTE_MS;
  const again = { endCount: REMADE_ENDS, checkKind: 'each', firstEndNo: null, minutesLater } as const;
  return [{ ...first, ...again }];
}

/** The check, the finding, what was decided about the ends, and the closing. */
export function recallActs(calendar: Calendar, looks: readonly DemoLook[]): Act[] {
  const { index } = indexOfCheck(looks);
  const checked = looks[index];
  invariant(checked !== undefined, 'the story has as many ends before the finding as it tells of');
  const checkedAtMs = checked.row.threadAtMs + (checked.minutesLater + CHECK_MINUTES) * MINUTE_MS;
  const by = actorOf('quality-1');
  const at = (days: number, minutes: number) => calendar.at(FOUND_OFFSET + days, minutes);
  return [
    act({ atMs: checkedAtMs, by, name: `check ${GAUGE}` }, 'check-gauge', (db, permit, entered, env) => {
      const check = { onDay: calendar.day(checked.row.offset), result: 'pass', qualifies: true } as const;
      return checkGauge(db, permit, { ...entered, ...check, toolId: GAUGE, againstToolId: 'MKR-1' }, env);
    }),
    act({ atMs: at(0, 655), by, name: `recall ${GAUGE}` }, 'keep-recalls', (db, permit, entered, env) =>
      openRecall(
        db,
        permit,
        {
          ...{ ...entered, gaugeId: GAUGE, direction: 'large', foundOnDay: calendar.day(FOUND_OFFSET) },
          found: 'As found: worn open at the mouth. Blue shows near the large end.',
          foundEntryId: failedCalibration(db, GAUGE),
          masterRecallId: null,
        },
        env,
      ),
    ),
    decide(calendar, {
      days: 2,
      ends: BLUED_ENDS,
      newestFirst: true,
      how: 'cleared-otherwise',
      evidence: 'Blued on the master seat: unbroken ring near the nose.',
    }),
    decide(calendar, {
      days: 16,
      ends: REMADE_ENDS,
      newestFirst: false,
      how: 'reworked',
      evidence: 'Gauged again: too wide at the mouth. Cut back and made again.',
    }),
    decide(calendar, {
      days: 17,
      ends: SUSPECT_ENDS - BLUED_ENDS - REMADE_ENDS,
      newestFirst: false,
      how: 'regauged-good',
      gaugeId: GAUGE,
      evidence: 'With the gauge back from the laboratory.',
    }),
    act({ atMs: at(18, 700), by, name: `close ${RECALL}` }, 'keep-recalls', (db, permit, entered, env) =>
      closeRecall(
        db,
        permit,
        {
          ...entered,
          recallId: RECALL,
          conclusion: 'All looked at; two ends made again. The gauge is now checked every month.',
        },
        env,
      ),
    ),
  ];
}

interface Decision {
  readonly days: number;
  readonly ends: number;
  readonly newestFirst: boolean;
  readonly how: DisposeSuspects['how'];
  readonly gaugeId?: string | null;
  readonly evidence: string;
}

function decide(
  calendar: Calendar,
  { days, ends, newestFirst, how, gaugeId = null, evidence }: Decision,
): Act {
  const offset = FOUND_OFFSET + days;
  const when = { atMs: calendar.at(offset, 640), by: actorOf('quality-1'), name: `decide ${RECALL} ${how}` };
  return act(when, 'keep-recalls', (db, permit, entered, env) => {
    const items = takeEnds(openSuspects(db, newestFirst), ends);
    const decision = { recallId: RECALL, items, how, gaugeId, evidence, onDay: calendar.day(offset) };
    return disposeSuspects(db, permit, { ...entered, ...decision }, env);
  });
}

/** What is still to be decided about; the blue check began with the newest ends and with those that had left. */
function openSuspects(db: Db, newestFirst: boolean): Suspect[] {
  const recall = findRecall(db, RECALL);
  invariant(recall !== undefined, 'the recall of the story is open');
  const looks = findAcceptances(
    db,
    recall.suspects.map(({ acceptanceId }) => acceptanceId),
  );
  const done = (id: string) =>
    recall.disposals.reduce((sum, row) => sum + (row.acceptanceId === id ? row.endCount : 0), 0);
  const kept = RECALLED_JOBS[0] ?? '';
  const open = recall.suspects
    .map(({ acceptanceId, endCount }) => ({ acceptanceId, endCount: endCount - done(acceptanceId) }))
    .filter(({ endCount }) => endCount > 0);
  if (!newestFirst) return open;
  const isKept = ({ acceptanceId }: Suspect) => looks.get(acceptanceId)?.jobLineId === jobLineId(kept, 1);
  return [...open.filter((one) => !isKept(one)), ...open.filter(isKept)];
}

function takeEnds(open: readonly Suspect[], ends: number): Suspect[] {
  let left = ends;
  return open.flatMap(({ acceptanceId, endCount }) => {
    const taken = Math.min(left, endCount);
    left -= taken;
    return taken === 0 ? [] : [{ acceptanceId, endCount: taken }];
  });
}
