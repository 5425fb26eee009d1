import { HAND_LABEL, type Hand } from '@/lib/shop/vocabulary';
import { lookAlikes, type ThreadSeries } from '@/lib/thread/unified-series';
import type { Rational } from '@/lib/units/rational';
import { inches, listWords } from '../format';

const SERIES_WORDS: Record<ThreadSeries, string> = {
  UNC: 'the coarse series',
  UNF: 'the fine series',
  UNEF: 'the extra fine series',
  UN: 'a constant-pitch series',
  UNS: 'a special thread, in none of the usual series',
};

interface Thread {
  readonly sizeIn: Rational;
  readonly tpi: number;
  readonly hand: Hand;
}

/** A designation read out: "9⁄16 in, 18 threads to the inch, the fine series, left hand". */
export function threadSpelledOut({ sizeIn, tpi, hand }: Thread, series: ThreadSeries): string {
  return `${inches(sizeIn.num / sizeIn.den)} in, ${tpi} threads to the inch, ${SERIES_WORDS[series]}, ${HAND_LABEL[hand]}`;
}

/** What else goes by the same size, so that a die is not ordered by its size alone; undefined where nothing does. */
export function lookAlikeWords({ sizeIn, tpi, hand }: Thread, series: ThreadSeries): string | undefined {
  const others = lookAlikes({ sizeIn, tpi });
  if (others.length === 0) return undefined;
  const size = inches(sizeIn.num / sizeIn.den);
  const named = listWords(
    others.map((other) => `${size}-${other.tpi} ${other.series}`),
    'or',
  );
  const left = hand === 'LH' ? ' Say LH too: right hand is what comes when nothing is said.' : '';
  return `${size}-${tpi} ${series} is not ${named}. Order by size, threads per inch and hand, never by size alone.${left}`;
}

/** What the ring gauges guard, in shop words. `notGoTurnsMax`: the rule of the row, or null where none is set. */
export function gaugeWords(
  hand: Hand,
  notGoTurnsMax: number | null,
): readonly { readonly label: string; readonly value: string }[] {
  const rule =
    notGoTurnsMax === null
      ? 'No rule is set in this row, so nobody may assume one.'
      : `By this row it may run on at most ${notGoTurnsMax} turns.`;
  return [
    {
      label: `GO ring, ${HAND_LABEL[hand]}`,
      value:
        'Must run on over the whole thread by hand. It guards the most that the pitch diameter may be, with errors of lead and angle in it: a worn die cuts large and GO stops first.',
    },
    {
      label: `NOT GO ring, ${HAND_LABEL[hand]}`,
      value: `Set to the least pitch diameter. ${rule} A thin thread comes from a die closed too far, a second cut, or thin tube.`,
    },
    {
      label: 'Three wires',
      value:
        'Measure the pitch diameter alone. Good over wires and tight on GO means lead or angle: look at the guide and the start, not at the die.',
    },
  ];
}
