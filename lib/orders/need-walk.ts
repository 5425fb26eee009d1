import { invariant } from '../invariant';

/** A line that uses up the life of edges: exposure at factor 1, times a factor per draw. Days count from today. */
export interface NeedLine {
  readonly lineId: string;
  readonly startInDays: number;
  readonly dueInDays: number;
  readonly amount: number;
  readonly weights: Float64Array;
  /** Of which part a new edge would be bought for it: an index; −1 where the shop knows none. */
  readonly part: number;
}

/** Life that is here or on its way. */
export interface NeedSource {
  /** Lines that can use it, by their place. */
  readonly serves: readonly number[];
  /** Days from today until it can be used: one figure, or one per draw. */
  readonly freeInDays: number | ArrayLike<number>;
  readonly life: Float64Array;
}

/** What the walk found of one part. */
export interface PartWalk {
  /** Of the n-th new edge: days from today until it is begun, per draw; Infinity where so many are not needed. */
  readonly needDays: readonly Float64Array[];
  /** Life left over behind the plan in what its lines can use, per draw, edges begun for it included. */
  readonly leftOver: Float64Array;
}

export interface NeedWalk {
  readonly parts: readonly PartWalk[];
  /** By line: in which draws it cannot be finished with what is here and on its way, and on which day it runs out. */
  readonly shortDays: readonly Float64Array[];
}

/** More new edges of one part than this are no plan that a shop can read. */
const PIECES_MAX = 200;
/** Exposure up to this counts as nothing. */
const SMALLEST = 1e-6;

/**
 * Walks the lines in their order, draw by draw: each uses up life that is here or has come by its last day, the life that
 * fewest lines can use first; where that runs out a new edge is begun, on the day that the share of the line cut so far
 * says. How many new edges the plan needs of each part, and when. One edge follows another in mid-line.
 * `newLife(part, n)`: lives of the n-th new edge of a part. Domain: lines in the order in which they are served.
 */
export function walkNeed(input: {
  readonly lines: readonly NeedLine[];
  readonly sources: readonly NeedSource[];
  readonly partCount: number;
  readonly newLife: (part: number, index: number) => Float64Array | undefined;
  readonly drawCount: number;
}): NeedWalk {
  const { lines, sources, partCount, drawCount } = input;
  const usable = lines.map((_, line) => sourcesOf(sources, line));
  const never = () => new Float64Array(drawCount).fill(Number.POSITIVE_INFINITY);
  const needDays: Float64Array[][] = Array.from({ length: partCount }, () => []);
  const shortDays = lines.map(never);
  const leftOver = Array.from({ length: partCount }, () => new Float64Array(drawCount));
  const left = new Float64Array(sources.length);
  for (let k = 0; k < drawCount; k++) {
    for (let s = 0; s < left.length; s++) left[s] = sources[s]?.life[k] ?? 0;
    const open = new Float64Array(partCount);
    const begun = new Int32Array(partCount);
    lines.forEach((line, i) => {
      const wanted = line.amount * (line.weights[k] ?? 0);
      let want = wanted - takeFrom(usable[i] ?? [], left, line, wanted, k, sources);
      const had = Math.min(want, open[line.part] ?? 0);
      want -= had;
      if (line.part >= 0) open[line.part] = (open[line.part] ?? 0) - had;
      while (want > SMALLEST) {
        const day = dayReached(line, 1 - want / wanted);
        const days = shortDays[i] as Float64Array;
        if (day < (days[k] as number)) days[k] = day;
        const index = line.part < 0 ? PIECES_MAX : (begun[line.part] as number);
        if (index >= PIECES_MAX) break;
        const life = input.newLife(line.part, index)?.[k] ?? 0;
        invariant(life >= 0, 'a new edge has a life of 0 or more');
        begun[line.part] = index + 1;
        note(needDays[line.part] as Float64Array[], index, k, day, never);
        open[line.part] = Math.max(0, life - want);
        want -= life;
      }
    });
    for (let p = 0; p < partCount; p++) (leftOver[p] as Float64Array)[k] = open[p] ?? 0;
    addLeft(leftOver, left, sources, lines, k);
  }
  return {
    parts: needDays.map((days, p) => ({ needDays: days, leftOver: leftOver[p] as Float64Array })),
    shortDays,
  };
}

/** The places of the sources that a line can use, the one that fewest lines can use first. */
function sourcesOf(sources: readonly NeedSource[], line: number): number[] {
  const mine = sources.flatMap((source, s) => (source.serves.includes(line) ? [s] : []));
  const reach = (s: number) => sources[s]?.serves.length ?? 0;
  return mine.sort((a, b) => reach(a) - reach(b) || a - b);
}

function takeFrom(
  mine: readonly number[],
  left: Float64Array,
  line: NeedLine,
  wanted: number,
  k: number,
  sources: readonly NeedSource[],
): number {
  let taken = 0;
  for (const s of mine) {
    if (wanted - taken <= 0) break;
    const free = sources[s]?.freeInDays ?? 0;
    const day = typeof free === 'number' ? free : (free[k] as number);
    if (day > line.startInDays && day >= line.dueInDays) continue;
    const part = Math.min(wanted - taken, left[s] as number);
    left[s] = (left[s] as number) - part;
    taken += part;
  }
  return taken;
}

/** The day on which a share of a line is cut, its ends spread evenly from start to due day. */
function dayReached({ startInDays, dueInDays }: NeedLine, share: number): number {
  return startInDays + Math.max(0, dueInDays - startInDays) * Math.min(1, Math.max(0, share));
}

/** Writes a day down among those of its part, in rising order. */
function note(days: Float64Array[], count: number, k: number, day: number, never: () => Float64Array): void {
  if (days.length <= count) days.push(never());
  let at = count;
  while (at > 0 && ((days[at - 1] as Float64Array)[k] as number) > day) {
    (days[at] as Float64Array)[k] = (days[at - 1] as Float64Array)[k] as number;
    at--;
  }
  (days[at] as Float64Array)[k] = day;
}

/** What a source has left counts for one part: that of the last line that can use it. */
function addLeft(
  leftOver: readonly Float64Array[],
  left: Float64Array,
  sources: readonly NeedSource[],
  lines: readonly NeedLine[],
  k: number,
): void {
  sources.forEach(({ serves }, s) => {
    const last = serves.at(-1);
    const of = last === undefined ? undefined : leftOver[lines[last]?.part ?? -1];
    if (of !== undefined) of[k] = (of[k] as number) + (left[s] as number);
  });
}
