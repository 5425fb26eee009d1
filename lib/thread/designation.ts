import { invariant } from '../invariant';
import { HAND_LABEL, type Hand } from '../shop/vocabulary';
import { fractionAscii, fractionText } from '../units/fraction-text';
import type { Rational } from '../units/rational';

export type ThreadSeries = 'UNF' | 'UNS';

/**
 * Series by size and threads per inch. UNF: the fine series of ASME B1.1 from 1/4 to 1 in. 1-14 is a special pitch:
 * fine at 1 in is 12, so "a 1 inch UNF die" is the wrong die for a 1 in tube of 14 TPI.
 */
const SERIES: Readonly<Record<string, ThreadSeries>> = {
  '1/4-28': 'UNF',
  '5/16-24': 'UNF',
  '3/8-24': 'UNF',
  '7/16-20': 'UNF',
  '1/2-20': 'UNF',
  '9/16-18': 'UNF',
  '5/8-18': 'UNF',
  '3/4-16': 'UNF',
  '7/8-14': 'UNF',
  '1-12': 'UNF',
  '1-14': 'UNS',
};

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

/** The series of a size and pitch, or undefined where the table has no such row. Source: ASME B1.1. */
export function threadSeries({
  sizeIn,
  tpi,
}: {
  readonly sizeIn: Rational;
  readonly tpi: number;
}): ThreadSeries | undefined {
  return SERIES[`${fractionAscii(sizeIn)}-${tpi}`];
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
