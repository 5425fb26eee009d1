import { invariant } from '../invariant';

/** What the hands do at one forward turn of a thread. */
export interface TurnCue {
  /** Forward turns made. */
  readonly turn: number;
  /** Whole forward turns that the thread needs; the last one may be a part. */
  readonly turns: number;
  /** Back off a quarter and clear the chips: after every forward turn. */
  readonly clearChips: boolean;
  /** Oil: before the first turn and again after every second. */
  readonly oil: boolean;
  readonly done: boolean;
}

/**
 * The cue after so many forward turns of a hand thread: chips every turn, oil every second one, done at the length.
 * Symbols: turnsPerEnd = thread length × threads per inch ÷ 25.4. Domain: turn ≥ 0, turnsPerEnd > 0.
 * Source: one turn forward and a quarter back is the published hand-die drill; oil every second turn common practice, no source.
 * @example turnCue(2, 10.5).oil // => true
 */
export function turnCue(turn: number, turnsPerEnd: number): TurnCue {
  invariant(Number.isInteger(turn) && turn >= 0, 'turnCue requires whole turns');
  invariant(turnsPerEnd > 0 && Number.isFinite(turnsPerEnd), 'turnCue requires turns of an end above 0');
  const turns = Math.ceil(turnsPerEnd - 1e-9);
  const done = turn >= turns;
  return { turn, turns, clearChips: turn > 0, oil: !done && turn % 2 === 0, done };
}
