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
  /** Pieces on order of one of the parts asked about, none of them begun: `life` is then 0, each is dealt its own. */
  readonly fresh?: { readonly part: number; readonly pieces: number };
  /** A blade that is reground when it is worn: back after so many days, with these lives one after the other. */
  readonly again?: { readonly afterDays: number; readonly lives: readonly Float64Array[] };
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
 * Walks the lines in their order, draw by draw: each uses up life that is here or comes before its due day, the life that
 * fewest lines can use first, then begins pieces on order that have come; where these run out a new edge is begun, on the
 * day that the share of the line cut so far says. How many new edges the plan needs of each part, and when. One edge
 * follows another in mid-line. As in the plan check, what comes in mid-line helps to finish a line, not to begin it.
 *
 * A blade that can be reground (`again`) goes out on the day on which the line has used it up, and is supply anew from the day it
 * is back: of that line where it is not over by then, else of those after.
 *
 * `newLife(part, n)`: lives of the n-th fresh edge of a part, those on order and those bought dealt out alike in the order in
 * which they are begun. So in a shop of one part an order that comes earlier, or one piece more of it, changes which of
 * these edges must be bought and nothing else: it never raises the need. (Of lines that overlap, one may therefore end the edge that a
 * later order brought for the other.) `countedToInDays`: what comes later is not in
 * what is left over. Domain: lines in the order in which they are served.
 */
export function walkNeed(input: NeedWalkInput): NeedWalk {
  const { lines, partCount, drawCount } = input;
  const never = () => new Float64Array(drawCount).fill(Number.POSITIVE_INFINITY);
  const needDays: Float64Array[][] = Array.from({ length: partCount }, () => []);
  const shortDays = lines.map(never);
  const leftOver = Array.from({ length: partCount }, () => new Float64Array(drawCount));
  const usable = lines.map((_, line) => sourcesOf(input.sources, line));
  for (let k = 0; k < drawCount; k++) {
    const stock = stockOf(input, k);
    lines.forEach((line, i) => {
      const wanted = line.amount * (line.weights[k] ?? 0);
      let want = takeHere(stock, usable[i] ?? [], line, wanted);
      while (want > SMALLEST) {
        const day = dayReached(line, 1 - want / wanted);
        const days = shortDays[i] as Float64Array;
        if (day < (days[k] as number)) days[k] = day;
        const index = line.part < 0 ? PIECES_MAX : (stock.bought[line.part] as number);
        if (index >= PIECES_MAX) break;
        stock.bought[line.part] = index + 1;
        note(needDays[line.part] as Float64Array[], index, k, day, never);
        const life = stock.begin(line.part);
        stock.open[line.part] = Math.max(0, life - want);
        want -= life;
      }
    });
    addLeft(leftOver, stock, input, k);
  }
  return {
    parts: needDays.map((days, p) => ({ needDays: days, leftOver: leftOver[p] as Float64Array })),
    shortDays,
  };
}

export interface NeedWalkInput {
  readonly lines: readonly NeedLine[];
  readonly sources: readonly NeedSource[];
  readonly partCount: number;
  readonly newLife: (part: number, index: number) => Float64Array | undefined;
  readonly drawCount: number;
  readonly countedToInDays?: number;
}

/** What one draw has at a moment of the walk. */
interface Stock {
  /** By source: from which day, how much life, and pieces on order not yet begun. */
  readonly free: Float64Array;
  /** By source: the day on which it was there first; a blade out for regrind has been. */
  readonly came: Float64Array;
  readonly left: Float64Array;
  readonly pieces: Int32Array;
  /** By source: the part of its fresh pieces, −1 for what is a tool. */
  readonly partOf: readonly number[];
  /** By source: regrinds that it has had in this draw, and what it does when it is used up. */
  readonly ground: Int32Array;
  regrind(source: number, onDay: number): boolean;
  /** By part: life left in the edge bought last, edges bought, and fresh edges begun, bought or from an order. */
  readonly open: Float64Array;
  readonly bought: Int32Array;
  readonly begun: Int32Array;
  /** Begins the next fresh edge of a part: its life. */
  begin(part: number): number;
}

function stockOf({ sources, partCount, newLife }: NeedWalkInput, k: number): Stock {
  const begun = new Int32Array(partCount);
  const ground = new Int32Array(sources.length);
  const free = Float64Array.from(sources, ({ freeInDays: day }) =>
    typeof day === 'number' ? day : (day[k] ?? Number.POSITIVE_INFINITY),
  );
  const left = Float64Array.from(sources, ({ life }) => life[k] ?? 0);
  return {
    ...{ free, came: Float64Array.from(free), left, ground },
    pieces: Int32Array.from(sources, ({ fresh }) => fresh?.pieces ?? 0),
    partOf: sources.map(({ fresh }) => fresh?.part ?? -1),
    ...{ open: new Float64Array(partCount), bought: new Int32Array(partCount), begun },
    begin: (part) => {
      const index = begun[part] as number;
      begun[part] = index + 1;
      const life = newLife(part, index)?.[k] ?? 0;
      invariant(life >= 0, 'a new edge has a life of 0 or more');
      return life;
    },
    regrind: (s, onDay) => {
      const again = sources[s]?.again;
      const life = again?.lives[ground[s] as number]?.[k];
      if (again === undefined || life === undefined || (left[s] as number) > SMALLEST) return false;
      ground[s] = (ground[s] as number) + 1;
      free[s] = onDay + again.afterDays;
      left[s] = life;
      return true;
    },
  };
}

/** Uses up what is here for a line; what is still wanted then. */
function takeHere(stock: Stock, mine: readonly number[], line: NeedLine, wanted: number): number {
  const { open, left, free, pieces, partOf } = stock;
  const lastDay = canBegin(stock, mine, line)
    ? Math.max(line.startInDays, line.dueInDays - 1)
    : line.startInDays;
  let want = wanted;
  const use = (life: number): number => {
    const part = Math.min(want, life);
    want -= part;
    return life - part;
  };
  for (const s of mine)
    while ((free[s] as number) <= lastDay || (partOf[s] as number) >= 0) {
      left[s] = use(left[s] as number);
      const done = wanted > 0 ? 1 - want / wanted : 0;
      if (!stock.regrind(s, Math.max(free[s] as number, dayReached(line, done)))) break;
    }
  if (line.part >= 0) open[line.part] = use(open[line.part] as number);
  while (want > SMALLEST) {
    const s = latestOrder(stock, mine, lastDay, line.part);
    if (s === undefined) break;
    pieces[s] = (pieces[s] as number) - 1;
    left[s] = use(stock.begin(partOf[s] as number));
  }
  return want;
}

/** Whether something that a line can use is there on its first day: a tool, an order that came, an edge begun before. */
function canBegin({ came, partOf, begun }: Stock, mine: readonly number[], line: NeedLine): boolean {
  if (line.part >= 0 && (begun[line.part] as number) > 0) return true;
  return mine.some(
    (s) =>
      (came[s] as number) <= line.startInDays ||
      ((partOf[s] as number) >= 0 && (begun[partOf[s] as number] as number) > 0),
  );
}

/** Of the orders that have come the line's own part first, of these the latest: earlier ones are left for whom that is too late. */
function latestOrder(
  { free, pieces, partOf }: Stock,
  mine: readonly number[],
  lastDay: number,
  part: number,
) {
  let best: number | undefined;
  for (const s of mine) {
    if ((pieces[s] as number) === 0 || (free[s] as number) > lastDay) continue;
    if (best === undefined) best = s;
    else if ((partOf[s] === part) !== (partOf[best] === part)) best = partOf[s] === part ? s : best;
    else if ((free[s] as number) > (free[best] as number)) best = s;
  }
  return best;
}

/** The places of the sources that a line can use, the one that fewest lines can use first. */
function sourcesOf(sources: readonly NeedSource[], line: number): number[] {
  const mine = sources.flatMap((source, s) => (source.serves.includes(line) ? [s] : []));
  const reach = (s: number) => sources[s]?.serves.length ?? 0;
  return mine.sort((a, b) => reach(a) - reach(b) || a - b);
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

/**
 * The one further edge that a regrind gives a blade behind the plan: work that nobody has planned wears it out half way to the end of
 * what is counted on average, so it is back in time where it is away no longer than the other half.
 */
function furtherEdge({ free, ground }: Stock, input: NeedWalkInput, s: number, k: number): number {
  const { again } = input.sources[s] as NeedSource;
  const { countedToInDays = Number.POSITIVE_INFINITY } = input;
  if (again === undefined) return 0;
  const days = countedToInDays - Math.max(0, free[s] as number);
  return 2 * again.afterDays <= days ? (again.lives[ground[s] as number]?.[k] ?? 0) : 0;
}

/** What is left behind the plan: bought edges, and of each source for the part of the last line that can use it. */
function addLeft(leftOver: readonly Float64Array[], stock: Stock, input: NeedWalkInput, k: number): void {
  const { sources, lines, newLife, countedToInDays = Number.POSITIVE_INFINITY } = input;
  const next = Int32Array.from(stock.begun);
  for (let p = 0; p < leftOver.length; p++) (leftOver[p] as Float64Array)[k] = stock.open[p] as number;
  sources.forEach(({ serves, fresh }, s) => {
    if ((stock.free[s] as number) > countedToInDays) return;
    let left = (stock.left[s] as number) + furtherEdge(stock, input, s, k);
    for (let n = 0; fresh !== undefined && n < (stock.pieces[s] as number); n++) {
      const index = next[fresh.part] as number;
      next[fresh.part] = index + 1;
      left += newLife(fresh.part, index)?.[k] ?? 0;
    }
    const of = leftOver[fresh?.part ?? lines[serves.at(-1) ?? -1]?.part ?? -1];
    if (of !== undefined) of[k] = (of[k] as number) + left;
  });
}
