import { TITANIUM_ID } from '../../lib/shipped/materials';
import type { Act } from './act';
import { type Calendar, monthDay } from './calendar';
import { countOfDrops, dispose, lot, move, open, readLevel, receive } from './crib-acts';
import { demoLots } from './fluid-lots';
import { CHLORINE_FREE_FLUID, OXYGEN_FLUID, SET_UP_OFFSET } from './set-up';

interface Can {
  readonly id: string;
  readonly partId: string;
  readonly receivedOffset: number;
  readonly levelMl: number;
  readonly shelfOffset: number;
  readonly openedOffset?: number;
  /** Levels read since, with the day. */
  readonly read?: readonly (readonly [offset: number, levelMl: number])[];
  /** Drops counted into 2.5 mL when it was opened. */
  readonly drops?: number;
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
    drops: 103,
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
    id: 'F-L02',
    partId: CHLORINE_FREE_FLUID,
    receivedOffset: monthDay(16, 4),
    levelMl: 250,
    shelfOffset: 80,
    openedOffset: -428,
    read: [[monthDay(9, 3), 140]],
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
  {
    id: 'F-L08',
    partId: OXYGEN_FLUID,
    receivedOffset: monthDay(7, 12),
    levelMl: 500,
    shelfOffset: 320,
    openedOffset: monthDay(6, 1),
    read: [[-6, 430]],
    drops: 55,
  },
];

/** The can that work of that day was cut with, where the story says: of the fluid for the material, the one opened last. */
export function canOn(offset: number, materialId: string): string | null {
  const partId = materialId === TITANIUM_ID ? CHLORINE_FREE_FLUID : 'fluid';
  const open = CANS.filter((can) => can.partId === partId && (can.openedOffset ?? 1) < offset);
  return open.sort((a, b) => (b.openedOffset ?? 0) - (a.openedOffset ?? 0))[0]?.id ?? null;
}

/** Cutting fluid: what came, was opened, was read, and the can that stood open too long. */
export function fluidActs(calendar: Calendar): Act[] {
  return [...oldCan(calendar), ...CANS.flatMap((can) => canActs(can, calendar)), ...lotActs(calendar)];
}

function canActs(can: Can, calendar: Calendar): Act[] {
  const deed = (offset: number, minutes: number) => ({
    atMs: calendar.at(offset, minutes),
    by: 'crib-1' as const,
    toolId: can.id,
    mark: offset,
  });
  const { partId, levelMl, receivedOffset, openedOffset, drops } = can;
  const dates = { receivedOnDay: calendar.day(receivedOffset), expiresOnDay: calendar.day(can.shelfOffset) };
  const counted = openedOffset === undefined || drops === undefined ? [] : [[openedOffset, drops] as const];
  return [
    receive(deed(receivedOffset, 545), { partId, levelMl, lot: can.id.slice(2), ...dates }),
    ...(openedOffset === undefined ? [] : [open(deed(openedOffset, 440), calendar.day(openedOffset))]),
    ...counted.map(([offset, many]) =>
      countOfDrops(deed(offset, 445), { drops: many, volumeMl: 2.5, onDay: calendar.day(offset) }),
    ),
    ...(can.read ?? []).map(([offset, left]) => readLevel(deed(offset, 450), left, calendar.day(offset))),
  ];
}

/** What came with each lot, written down when it came. */
function lotActs(calendar: Calendar): Act[] {
  return demoLots(calendar).map(({ offset, facts }) => {
    const deed = { atMs: calendar.at(offset, 560), by: 'quality-1' as const, toolId: `F-${facts.lot}` };
    return lot(deed, facts);
  });
}

/** Month 11: a can that had stood open for fourteen months was taken out of use, and went to the waste carrier. */
function oldCan(calendar: Calendar): Act[] {
  const counted = { atMs: calendar.at(SET_UP_OFFSET, 650), by: 'crib-1' as const, toolId: 'F-L03' };
  const barred = { atMs: calendar.at(monthDay(11, 19), 600), by: 'quality-1' as const, toolId: 'F-L03' };
  const gone = { atMs: calendar.at(monthDay(10, 9), 600), by: 'crib-1' as const, toolId: 'F-L03' };
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
    readLevel({ ...barred, atMs: calendar.at(monthDay(11, 19), 590) }, 900, calendar.day(monthDay(11, 19))),
    move({ ...barred, reason: 'Opened 14 months ago; it keeps 12. To disposal.' }, { to: 'scrapped' }),
    dispose(gone, {
      ...{ onDay: calendar.day(monthDay(10, 9)), how: 'waste-carrier', transferNote: 'WTN-0311' },
      volumeMl: 900,
    }),
  ];
}
