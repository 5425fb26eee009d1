import type { Connection, LifeGuess } from '../shop/noun';
import { sizeKey } from '../shop/size';
import { turnsPerEnd } from '../thread/pitch';
import { completeSetParts } from './complete-set-parts';

/** Typical life by tube size: a die in forward turns, a blade in cones per edge; hand turned, cold-worked 316. */
const TYPICAL: Readonly<Record<string, { readonly dieTurns: number; readonly bladeCones: number }>> = {
  '1/4': { dieTurns: 1400, bladeCones: 70 },
  '3/8': { dieTurns: 1300, bladeCones: 60 },
  '9/16': { dieTurns: 1200, bladeCones: 50 },
  '3/4': { dieTurns: 1100, bladeCones: 45 },
  '1': { dieTurns: 900, bladeCones: 35 },
};

/** Wide on purpose: nobody should trust a first guess closer than this. */
const GIVE_OR_TAKE = 2;

/**
 * First-guess lives of the die and the blade of one connection, in ends of that connection, give or take a factor of
 * two: die ends = typical turns ÷ turns per end, to the nearest five; blade cones as they stand. None for a size that the table does not
 * hold: the shop then says its own. Source: common practice, no source.
 */
export function firstGuesses(connection: Connection): LifeGuess[] {
  const typical = TYPICAL[sizeKey({ num: connection.odNum, den: connection.odDen })];
  if (typical === undefined) return [];
  const turns = turnsPerEnd({ lengthMm: connection.threadLengthMm, tpi: connection.tpi });
  const ends = { die: Math.round(typical.dieTurns / turns / 5) * 5, blade: typical.bladeCones };
  return completeSetParts(connection).flatMap(({ id: partId, role }) =>
    role === 'die' || role === 'blade'
      ? [{ partId, connectionId: connection.id, ends: ends[role], giveOrTake: GIVE_OR_TAKE }]
      : [],
  );
}
