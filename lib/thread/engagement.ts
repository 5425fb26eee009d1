import { invariant } from '../invariant';
import { type Fixed, fixedOf, overFixed } from '../numeric/fixed-decimal';
import type { ThreadSeries } from './unified-series';

/** Constant pitches whose tolerances, like those of coarse and fine, are taken for one diameter of engagement. */
const ONE_DIAMETER_TPI: readonly number[] = [4, 6, 8];
/** Pitches of engagement that the other series are toleranced for. */
const PITCHES = 9;

/**
 * Length of engagement for which a thread's tolerances are tabulated, as an exact decimal of an inch: one diameter for coarse,
 * fine and the 4, 6 and 8 constant pitches; nine pitches for extra fine, the finer constant pitches and special threads.
 * 1-14 UNS is the exception: a former fine thread whose table kept one diameter. Taking nine pitches there moves its 2A limits
 * by up to 0.0004 in. Symbols: D, basic major diameter, in; n, threads per inch. Source: published, from memory. ASME B1.1.
 */
export function engagementFixed(thread: {
  readonly basicMajorIn: number;
  readonly tpi: number;
  readonly series: ThreadSeries;
}): Fixed {
  const { basicMajorIn, tpi, series } = thread;
  invariant(basicMajorIn > 0 && tpi > 0, 'engagement requires a diameter and threads per inch above 0');
  const wasFine = basicMajorIn === 1 && tpi === 14;
  const oneDiameter =
    series === 'UNC' || series === 'UNF' || wasFine || (series === 'UN' && ONE_DIAMETER_TPI.includes(tpi));
  return oneDiameter ? fixedOf(basicMajorIn) : overFixed(fixedOf(PITCHES), fixedOf(tpi));
}
