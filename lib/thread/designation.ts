import { invariant } from '../invariant';
import { HAND_LABEL, type Hand } from '../shop/vocabulary';
import { fractionAscii, fractionText } from '../units/fraction-text';
import type { Rational } from '../units/rational';
import { type ThreadSeries, threadSeries } from './unified-series';

/** How a thread is named: on an order, on a screen, and its hand in words. */
export interface ThreadDesignation {
  /** For orders, files and search: 9/16-18 UNF-LH. Right hand carries no mark. */
  readonly text: string;
  /** The same with a true fraction: 9⁄16-18 UNF-LH. */
  readonly screenText: string;
  /** Said for both hands, since an unmarked die is easily taken for the other: "left hand", "right hand". */
  readonly handWords: string;
  /** Absent where the table has no row; none is guessed, and the text then carries none. */
  readonly series: ThreadSeries | undefined;
}

/**
 * Names a thread: nominal size, threads per inch, series, and LH where it is left hand. The standard leaves right hand
 * unmarked; left hand must always be stated. Domain: tpi above 0. Source: ASME B1.1, designation.
 */
export function threadDesignation(thread: {
  readonly sizeIn: Rational;
  readonly tpi: number;
  readonly hand: Hand;
}): ThreadDesignation {
  const { sizeIn, tpi, hand } = thread;
  invariant(tpi > 0, 'threadDesignation requires threads per inch above 0');
  const series = threadSeries({ sizeIn, tpi });
  const tail = `-${tpi}${series === undefined ? '' : ` ${series}`}${hand === 'LH' ? '-LH' : ''}`;
  return {
    text: `${fractionAscii(sizeIn)}${tail}`,
    screenText: `${fractionText(sizeIn)}${tail}`,
    handWords: HAND_LABEL[hand],
    series,
  };
}
