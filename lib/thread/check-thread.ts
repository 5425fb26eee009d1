import { ok, type Result, refuse } from '../result';
import { type Rational, rationalValue } from '../units/rational';

/** Sizes and pitches that the unified tables run over. */
const LEAST_IN = 0.06;
const MOST_IN = 6;
const LEAST_TPI = 4;
const MOST_TPI = 80;
/** A thread's depth on both sides, in pitches, with a little metal left between. */
const DEPTH_IN_PITCHES = 1.3;

/** A thread that the limit formulas are made for, or in a sentence why not. For the door: the formulas only assert it. */
export function checkThread<T extends { readonly sizeIn: Rational; readonly tpi: number }>(
  thread: T,
): Result<T> {
  const sizeIn = rationalValue(thread.sizeIn);
  if (!(thread.tpi >= LEAST_TPI && thread.tpi <= MOST_TPI))
    return refuse('tpi', `Threads per inch lie between ${LEAST_TPI} and ${MOST_TPI}.`, 'tpi');
  if (!(sizeIn >= LEAST_IN && sizeIn <= MOST_IN))
    return refuse('size', `The tables run from ${LEAST_IN.toFixed(3)} in to ${MOST_IN} in.`, 'size');
  if (sizeIn <= DEPTH_IN_PITCHES / thread.tpi)
    return refuse('tpi', 'A thread that coarse is deeper than this size allows.', 'tpi');
  return ok(thread);
}
