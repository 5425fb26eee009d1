import { fractionAscii } from '../units/fraction-text';
import { type Rational, rationalValue } from '../units/rational';

/** Coarse, fine, extra fine, constant pitch, and special: the unified series of inch screw threads. */
export type ThreadSeries = 'UNC' | 'UNF' | 'UNEF' | 'UN' | 'UNS';

/** Sizes with their threads per inch. Source: published, from memory. ASME B1.1, standard series combinations. */
const ROWS: Readonly<Record<'UNC' | 'UNF' | 'UNEF', string>> = {
  UNC: `#1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-13 9/16-12 5/8-11 3/4-10
    7/8-9 1-8 1_1/8-7 1_1/4-7 1_3/8-6 1_1/2-6 1_3/4-5 2-4.5 2_1/4-4.5 2_1/2-4 2_3/4-4 3-4 3_1/4-4 3_1/2-4 3_3/4-4 4-4`,
  UNF: `#0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28 1/4-28 5/16-24 3/8-24 7/16-20 1/2-20 9/16-18 5/8-18
    3/4-16 7/8-14 1-12 1_1/8-12 1_1/4-12 1_3/8-12 1_1/2-12`,
  UNEF: `#12-32 1/4-32 5/16-32 3/8-32 7/16-28 1/2-28 9/16-24 5/8-24 11/16-24 3/4-20 13/16-20 7/8-20 15/16-20 1-20
    1_1/16-18 1_1/8-18 1_3/16-18 1_1/4-18 1_5/16-18 1_3/8-18 1_7/16-18 1_1/2-18 1_9/16-18 1_5/8-18 1_11/16-18`,
};

/** Constant pitches, and the sizes in inches from which to which each is standard. Source as above. */
const CONSTANT_PITCH: Readonly<Record<number, readonly [from: number, to: number]>> = {
  4: [2.5, 6],
  6: [1.375, 6],
  8: [1, 6],
  12: [0.5625, 6],
  16: [0.375, 6],
  20: [0.25, 3],
  28: [0.216, 1.5],
  32: [0.138, 1],
};

/** Special threads that shops order by name. 1-14 was in the fine series once; at 1 in fine is 12 now. */
const SPECIAL: readonly string[] = ['1-14'];

const SERIES = new Map<string, ThreadSeries>([
  ...SPECIAL.map((key) => [key, 'UNS'] as const),
  ...(['UNEF', 'UNF', 'UNC'] as const).flatMap((series) =>
    ROWS[series].split(/\s+/).map((row) => [rowKey(row), series] as const),
  ),
]);

/** Diameter of a numbered size, in: 0.060 + 0.013 × number. Source: published. ASME B1.1. */
export function numberedSizeIn(number: number): Rational {
  const thousandths = 60 + 13 * number;
  return { num: thousandths, den: 1000 };
}

/**
 * The series of a size and pitch by the standard's own tables, or undefined where neither a row nor a constant-pitch run of
 * common sizes (sixteenths of an inch) holds it: a special thread that the tables do not name.
 */
export function threadSeries({
  sizeIn,
  tpi,
}: {
  readonly sizeIn: Rational;
  readonly tpi: number;
}): ThreadSeries | undefined {
  const row = SERIES.get(sizeTpiKey(sizeIn, tpi));
  if (row !== undefined) return row;
  const [from, to] = CONSTANT_PITCH[tpi] ?? [Number.POSITIVE_INFINITY, 0];
  const size = rationalValue(sizeIn);
  return size >= from && size <= to && Number.isInteger(size * 16) ? 'UN' : undefined;
}

/**
 * The other threads that go by the same size: what comes when a die is ordered by size alone. Coarse, fine, extra fine and the
 * special ones named here; never the thread itself.
 * @example lookAlikes({ sizeIn: { num: 1, den: 1 }, tpi: 14 })[0].tpi // => 8
 */
export function lookAlikes(thread: {
  readonly sizeIn: Rational;
  readonly tpi: number;
}): readonly { readonly tpi: number; readonly series: ThreadSeries }[] {
  const own = sizeTpiKey(thread.sizeIn, thread.tpi);
  const size = own.slice(0, own.lastIndexOf('-'));
  return [...SERIES]
    .filter(([key]) => key !== own && key.slice(0, key.lastIndexOf('-')) === size)
    .map(([key, series]) => ({ tpi: Number(key.slice(key.lastIndexOf('-') + 1)), series }))
    .sort((a, b) => a.tpi - b.tpi);
}

function sizeTpiKey(sizeIn: Rational, tpi: number): string {
  const thousandths = (sizeIn.num * 1000) / sizeIn.den;
  const number = (thousandths - 60) / 13;
  const isNumbered = Number.isInteger(number) && number >= 0 && number <= 12;
  return `${isNumbered ? `#${number}` : fractionAscii(sizeIn)}-${tpi}`;
}

function rowKey(row: string): string {
  return row.replace('_', ' ');
}
