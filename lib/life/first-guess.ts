import { invariant } from '../invariant';
import { normalQuantile } from '../numeric/normal';

/** What someone typed on the first day: "a 9/16 die is good for about 150 threads, give or take a factor of two". */
export interface FirstGuess {
  /** Without it, the guess is about the size, not about one part. */
  readonly partId?: string;
  readonly odIn: number;
  /** Typical (median) life of a new edge in base exposure of the reference material: turns (die) or mm³ (blade). */
  readonly lifeBase: number;
  /** "Give or take a factor of": the typical life lies within lifeBase/factor … lifeBase·factor with 80 % belief. */
  readonly factor: number;
}

/**
 * A first guess as a normal figure: mean and spread of the log of the typical life. sd = ln(factor)/Φ⁻¹(0.9).
 * Domain: lifeBase > 0, factor > 1. Source: formula.
 */
export function guessAsNormal({ lifeBase, factor }: FirstGuess): { mean: number; sd: number } {
  invariant(lifeBase > 0 && Number.isFinite(lifeBase), 'a first guess of life is above zero');
  invariant(factor > 1 && Number.isFinite(factor), 'give or take a factor above one');
  return { mean: Math.log(lifeBase), sd: Math.log(factor) / normalQuantile(0.9) };
}

/** Guesses in a fixed order, whatever order they came in. */
export function orderGuesses(guesses: readonly FirstGuess[]): FirstGuess[] {
  const key = (guess: FirstGuess): string => guess.partId ?? '';
  return [...guesses].sort((a, b) => {
    if (key(a) !== key(b)) return key(a) < key(b) ? -1 : 1;
    return a.odIn - b.odIn || a.lifeBase - b.lifeBase || a.factor - b.factor;
  });
}
