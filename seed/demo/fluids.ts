import type { Act } from './act';
import { type Calendar, monthDay } from './calendar';
import { move, open, readLevel, receive } from './crib-acts';
import { CHLORINE_FREE_FLUID, SET_UP_OFFSET } from './set-up';

interface Can {
  readonly id: string;
  readonly partId: string;
  readonly receivedOffset: number;
  readonly levelMl: number;
  readonly shelfOffset: number;
  readonly openedOffset?: number;
  /** Levels read since, with the day. */
  readonly read?: readonly (readonly [offset: number, levelMl: number])[];
}

/** The cans of the story, the oldest first. Levels fall as cans are drawn on. */
const CANS: readonly Can[] = [
  {
    id: 'F-L04',
    partId: 'fluid',
    receivedOffset: monthDay(12, 6),
    levelMl: 5000,
    shelfOffset: 210,
    openedOffset: monthDay(11, 20),
    read: [
      [monthDay(8, 15), 3400],
      [monthDay(5, 15), 1700],
      [monthDay(2, 15), 520],
      [-9, 260],
    ],
  },
  {
    id: 'F-L05',
    partId: 'fluid',
    receivedOffset: monthDay(9, 5),
    levelMl: 5000,
    shelfOffset: 400,
    openedOffset: monthDay(3, 2),
    read: [[-9, 3900]],
  },
  {
    id: 'F-L06',
    partId: CHLORINE_FREE_FLUID,
    receivedOffset: monthDay(15, 8),
    levelMl: 1000,
    shelfOffset: 260,
    openedOffset: monthDay(1, 1),
    read: [[-4, 880]],
  },
  { id: 'F-L07', partId: 'fluid', receivedOffset: monthDay(2, 10), levelMl: 5000, shelfOffset: 690 },
];

/** Cutting fluid: what came, was opened, was read, and the can that stood open too long. */
export function fluidActs(calendar: Calendar): Act[] {
  return [...oldCan(calendar), ...CANS.flatMap((can) => canActs(can, calendar))];
}

function canActs(can: Can, calendar: Calendar): Act[] {
  const deed = (offset: number, minutes: number) => ({
    atMs: calendar.at(offset, minutes),
    by: 'crib-1' as const,
    toolId: can.id,
    mark: offset,
  });
  const { partId, levelMl, receivedOffset, openedOffset } = can;
  const dates = { receivedOnDay: calendar.day(receivedOffset), expiresOnDay: calendar.day(can.shelfOffset) };
  return [
    receive(deed(receivedOffset, 545), { partId, levelMl, lot: can.id.slice(2), ...dates }),
    ...(openedOffset === undefined ? [] : [open(deed(openedOffset, 440), calendar.day(openedOffset))]),
    ...(can.read ?? []).map(([offset, left]) => readLevel(deed(offset, 450), left, calendar.day(offset))),
  ];
}

/** Month 11: a can that had stood open for fourteen months was taken out of use. */
function oldCan(calendar: Calendar): Act[] {
  const counted = { atMs: calendar.at(SET_UP_OFFSET, 650), by: 'crib-1' as const, toolId: 'F-L03' };
  const barred = { atMs: calendar.at(monthDay(11, 19), 600), by: 'quality-1' as const, toolId: 'F-L03' };
  return [
    receive(
      { ...counted, reason: 'Opening count.' },
      {
        partId: 'fluid',
        lot: 'L03',
        levelMl: 2600,
        receivedOnDay: calendar.day(monthDay(26, 0)),
        openedOnDay: calendar.day(monthDay(25, 19)),
        expiresOnDay: calendar.day(monthDay(2, 0)),
      },
    ),
    move({ ...barred, reason: 'Opened 14 months ago; it keeps 12. To disposal.' }, { to: 'scrapped' }),
  ];
}
