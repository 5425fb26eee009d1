import type { Act } from './act';
import { type Calendar, monthDay } from './calendar';
import { move, receive } from './crib-acts';
import { SET_UP_OFFSET } from './set-up';

/** Bodies, stocks, guides, collets, brushes and deburring tools found at the opening count. */
const FOUND: readonly (readonly [id: string, partId: string])[] = [
  ...['A', 'B', 'C'].map((letter) => [`BDY-${letter}`, 'coning-body-small'] as const),
  ['BDY-D', 'coning-body-large'],
  ...['A', 'B', 'C', 'D'].map((letter) => [`STK-${letter}`, 'die-stock'] as const),
  ...(
    [
      ['25', '1-4'],
      ['38', '3-8'],
      ['56', '9-16'],
      ['75', '3-4'],
      ['100', '1'],
    ] as const
  ).flatMap(([code, size]) => [
    [`GDE-${code}-1`, `coning-guide-${size}`] as const,
    [`TGD-${code}-1`, `threading-guide-${size}`] as const,
    [`CLT-${code}-1`, `collet-${size}`] as const,
  ]),
  ['GDE-38-2', 'coning-guide-3-8'],
  ['CLT-38-2', 'collet-3-8'],
  ...[1, 2, 3].map((count) => [`DBR-${count}`, 'deburr-tool'] as const),
  ...[1, 2, 3, 4, 5].map((count) => [`BRS-${count}`, 'brush'] as const),
];

/** The shop's lasting tools, a guide that wore out and one that was lost. */
export function equipmentActs(calendar: Calendar): Act[] {
  const found = FOUND.map(([toolId, partId], index) =>
    receive(
      { atMs: calendar.at(SET_UP_OFFSET, 600 + index), by: 'crib-1', toolId, reason: 'Opening count.' },
      { partId, receivedOnDay: calendar.day(SET_UP_OFFSET) },
    ),
  );
  return [...found, ...guidesOfMonth7(calendar), ...guideLost(calendar)];
}

/** Month 7: chatter on many cones came from a bell-mouthed guide. */
function guidesOfMonth7(calendar: Calendar): Act[] {
  const offset = monthDay(7, 12);
  const reason = 'Bell-mouthed: the chatter of the last weeks came from it.';
  const worn = { atMs: calendar.at(offset, 930), by: 'quality-1' as const, toolId: 'GDE-38-1', reason };
  const fresh = { atMs: calendar.at(offset + 9, 540), by: 'crib-1' as const, toolId: 'GDE-38-3' };
  return [
    move(worn, { to: 'scrapped' }),
    receive(fresh, { partId: 'coning-guide-3-8', receivedOnDay: calendar.day(offset + 9) }),
  ];
}

/** Month 3: a kit came back without its guide, and the search found nothing. */
function guideLost(calendar: Calendar): Act[] {
  const reason = 'Kit came back without it. Benches, chip trays and tube ends searched; not found.';
  const deed = { atMs: calendar.at(monthDay(3, 17), 960), by: 'crib-2' as const, toolId: 'GDE-38-2', reason };
  return [move(deed, { to: 'lost' })];
}
