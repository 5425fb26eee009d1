import { logMedianForm } from './edge-rows';
import { type FirstGuess, guessAsNormal } from './first-guess';
import type { NormalBelief } from './log-posterior';
import type { ParameterLayout } from './parameter-layout';
import type { LifePriors } from './priors';

/** A first guess as a belief about its part's log median, part of its error shared with the other guesses. */
export function guessBelief(guess: FirstGuess, layout: ParameterLayout, priors: LifePriors): NormalBelief {
  const { mean, sd } = guessAsNormal(guess);
  const form = logMedianForm({ partId: guess.partId, odIn: guess.odIn, regrinds: 0 }, layout);
  const shared = sd * Math.sqrt(priors.guessSharedShare);
  return {
    form: {
      indices: [...form.indices, layout.indexOf.guessError as number],
      coefficients: [...form.coefficients, shared],
    },
    mean,
    sd: sd * Math.sqrt(1 - priors.guessSharedShare),
  };
}
