import { placeOrder, slipOrder } from '../../db/commands/keep-orders';
import type { Chance } from '../random';
import { type Act, act } from './act';
import { type Calendar, monthDay } from './calendar';
import { endOfEdge, move, receive } from './crib-acts';
import { DIES, type DieStory, FAULTY_LOT } from './dies';
import { MIXED_BOX_ORDER } from './past-orders';
import { actorOf } from './people';
import { SET_UP_OFFSET } from './set-up';

/** When each die of the story was first and last used. */
export type DieUse = ReadonlyMap<string, { readonly firstMs: number; readonly lastMs: number }>;

const DAY_MS = 86_400_000;
const SLIPPED = {
  id: 'PO-041',
  dieId: 'D-56-04',
  placedOffset: monthDay(16, 4),
  cameOffset: monthDay(16, 4) + 50,
};

/** The dies of the story: received, taken out of service after their last cut, and what else befell dies. */
export function dieActs(calendar: Calendar, chance: Chance, use: DieUse): Act[] {
  return [
    ...DIES.flatMap((die) => dieLife(die, calendar, chance, use)),
    ...unmarkedDies(calendar),
    ...heldLot(calendar),
    ...wrongHand(calendar),
    ...slippedOrder(calendar),
  ];
}

function dieLife(die: DieStory, calendar: Calendar, chance: Chance, use: DieUse): Act[] {
  const used = use.get(die.id);
  if (used === undefined) return [];
  const firstOffset = Math.floor((used.firstMs - calendar.at(0, 0)) / DAY_MS);
  const orderId = die.id === SLIPPED.dieId ? SLIPPED.id : null;
  const offset =
    orderId === null ? Math.max(SET_UP_OFFSET, firstOffset - chance.int(9, 24)) : SLIPPED.cameOffset;
  const got = { atMs: calendar.at(offset, 720 + chance.int(0, 90)), by: 'crib-1' as const, toolId: die.id };
  const { partId, lot, cause, reason, endsInMonth } = die;
  const received = receive(got, { partId, lot, orderId, hand: 'LH', receivedOnDay: calendar.day(offset) });
  if (endsInMonth === null) return [received];
  const ended = { atMs: used.lastMs + 40 * 60_000, by: 'crib-1' as const, toolId: die.id, reason };
  return [received, endOfEdge(ended, { cause, to: 'scrapped' })];
}

/** Month 18: two dies without a mark were found at the opening count; what they had cut, nobody knows. */
function unmarkedDies(calendar: Calendar): Act[] {
  const receivedOnDay = calendar.day(SET_UP_OFFSET);
  const found = (toolId: string, minutes: number) => ({
    atMs: calendar.at(SET_UP_OFFSET, minutes),
    by: 'crib-1' as const,
    toolId,
    reason: 'Found unmarked at the opening count; history unknown before.',
  });
  const receipt = { hand: 'LH' as const, receivedOnDay, opening: { known: 'unknown' as const } };
  const tight = { atMs: calendar.at(SET_UP_OFFSET + 3, 600), by: 'quality-1' as const, toolId: 'D-75-90' };
  return [
    receive(found('D-56-90', 705), { partId: 'die-9-16', ...receipt }),
    receive(found('D-75-90', 706), { partId: 'die-3-4', ...receipt }),
    move(
      { ...tight, reason: 'First-off: GO tight. Kept apart until it is looked at.' },
      { to: 'quarantined' },
    ),
  ];
}

/** Months 10 to 8: two more dies of the faulty lot were set aside unused and sent back for credit. */
function heldLot(calendar: Calendar): Act[] {
  return ['D-56-15', 'D-56-16'].flatMap((toolId, index) => {
    const deed = (offset: number) => ({
      atMs: calendar.at(offset, 940 + index),
      by: 'lead-1' as const,
      toolId,
    });
    const receivedOnDay = calendar.day(monthDay(12, 1));
    return [
      receive(
        { ...deed(monthDay(12, 1)), by: 'crib-1' },
        { partId: 'die-9-16', hand: 'LH', lot: FAULTY_LOT, receivedOnDay },
      ),
      move(
        { ...deed(monthDay(9, 29)), reason: 'Two of its lot died early; held unused.' },
        { to: 'quarantined' },
      ),
      move({ ...deed(monthDay(8, 14)), reason: 'Sent back to Ninefold Dies; credited.' }, { to: 'scrapped' }),
    ];
  });
}

/** Month 12: a right-hand die lay in the box of left-hand ones. It was seen at the door, and went back. */
function wrongHand(calendar: Calendar): Act[] {
  const offset = monthDay(12, 1);
  const toolId = 'D-56-17';
  const came = { atMs: calendar.at(offset, 945), by: 'crib-1' as const, toolId };
  const back = { atMs: calendar.at(offset + 6, 620), by: 'lead-1' as const, toolId };
  const receipt = { partId: 'die-9-16', hand: 'RH' as const, lot: '9F-32', orderId: MIXED_BOX_ORDER };
  const receivedOnDay = calendar.day(offset);
  return [
    receive(
      { ...came, reason: 'Marked RH, in the box of left-hand dies.' },
      { ...receipt, receivedOnDay, takeWrongHand: true },
    ),
    move({ ...back, reason: 'Sent back to Ninefold Dies: wrong hand.' }, { to: 'scrapped' }),
  ];
}

/** Month 15: the 9/16 die ordered in month 16 slipped by three weeks; D-56-04 is what came in the end. */
function slippedOrder(calendar: Calendar): Act[] {
  const by = actorOf('lead-1');
  const { id, placedOffset, cameOffset } = SLIPPED;
  const order = {
    id,
    partId: 'die-9-16',
    quantity: 1,
    placedOnDay: calendar.day(placedOffset),
    expectedOnDay: calendar.day(placedOffset + 28),
  };
  const expectedOnDay = calendar.day(cameOffset - 1);
  const slipped = { atMs: calendar.at(placedOffset + 26, 900), by, name: `slip ${id}` };
  return [
    act(
      { atMs: calendar.at(placedOffset, 900), by, name: `order ${id}` },
      'keep-orders',
      (db, permit, entered, env) => placeOrder(db, permit, { ...entered, order }, env),
    ),
    act(
      { ...slipped, reason: 'Ninefold Dies: three weeks late.' },
      'keep-orders',
      (db, permit, entered, env) => slipOrder(db, permit, { ...entered, orderId: id, expectedOnDay }, env),
    ),
  ];
}
