import { addDays } from '@/lib/calendar/day';
import type { PlanInput } from '@/lib/capability/check-plan';
import type { LifeDraws } from '@/lib/ensemble/life-draws';
import { normalQuantile } from '@/lib/numeric/normal';

/**
 * A shop played day by day by someone who knows none of the plan check's code and cannot see a die's life: small plans of
 * two sizes, dies and blades with Weibull lives, orders that come on lognormal days. Chance by a plain generator of its own.
 */
export interface SimLine {
  readonly id: string;
  readonly size: 'S' | 'T';
  readonly ends: number;
  /** Days from today. */
  readonly start: number;
  readonly due: number;
  readonly perEnd: { readonly die: number; readonly blade: number };
}

export interface SimTool {
  readonly id: string;
  readonly kind: 'die' | 'blade';
  readonly sizes: readonly ('S' | 'T')[];
  /** Weibull life of the edge, and what it has cut already. */
  readonly shape: number;
  readonly scale: number;
  readonly used: number;
  /** For a piece on order: its lognormal day. In the crib without. */
  readonly comes?: { readonly medianDays: number; readonly sdLog: number };
}

export interface SimShop {
  readonly lines: readonly SimLine[];
  readonly tools: readonly SimTool[];
}

export type Chance = () => number;

/** Lehmer's generator modulo 2³¹ − 1, multiplier 48 271 (Park and Miller), the first figures thrown away. */
export function chanceOf(seed: number): Chance {
  let state = (seed * 2_654_435_761) % 2_147_483_646;
  if (state <= 0) state += 2_147_483_646;
  const next = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  for (let i = 0; i < 20; i++) next();
  return next;
}

/** What is left of a Weibull life that has outlived what it cut: T = η·((x/η)^β − ln u)^(1/β) − x. */
function drawnLife({ shape, scale, used }: SimTool, u: number): number {
  return scale * ((used / scale) ** shape - Math.log(u)) ** (1 / shape) - used;
}

/** Box and Muller. */
function drawnDay({ medianDays, sdLog }: { medianDays: number; sdLog: number }, chance: Chance): number {
  const normal = Math.sqrt(-2 * Math.log(chance())) * Math.cos(2 * Math.PI * chance());
  return Math.round(medianDays * Math.exp(sdLog * normal));
}

/**
 * One future: whether each line was made. Every day the lines that run, in start order, cut all they can with what is there,
 * first with what fits nothing else. On a line's first day it and the lines that still run must be able to hold a die and a
 * blade each, one line to a piece, handing over if need be; else it does not begin, and is not made. When its edge is done
 * it goes on with any other. An
 * edge that is done in the middle of an end: with `spoils` that end is begun anew, else the next edge finishes it. What comes
 * on a line's due day comes too late for it, unless it begins that day.
 */
export function playOnce(shop: PreparedShop, chance: Chance, spoils: boolean): boolean[] {
  const pieces = shop.tools.map((tool): Piece => {
    const left = drawnLife(tool, chance());
    const day = tool.comes === undefined ? 0 : Math.max(0, drawnDay(tool.comes, chance));
    return { left, day, held: false };
  });
  const state = shop.lines.map((line) => ({ line, die: line.ends, blade: line.ends, begun: false }));
  for (let day = 0; day <= shop.lastDay; day++) {
    for (const [i, one] of state.entries()) {
      const { line } = one;
      if (day < line.start || day > line.due) continue;
      const fitting = shop.fitting[i];
      if (fitting === undefined) continue;
      if (day === line.start) {
        const running = state.filter((other, j) => (other.begun && other.line.due >= day) || j === i);
        one.begun = (['die', 'blade'] as const).every((kind) =>
          canAllHold(
            running.map((other) => shop.fitting[state.indexOf(other)]?.[kind] ?? []),
            pieces,
            day,
          ),
        );
      }
      if (!one.begun || (one.die <= 0 && one.blade <= 0)) continue;
      one.die = cut(one.die, line.perEnd.die, useful(fitting.die, pieces, day, line), spoils);
      one.blade = cut(one.blade, line.perEnd.blade, useful(fitting.blade, pieces, day, line), spoils);
    }
  }
  return state.map(({ die, blade, begun }) => begun && die <= 0 && blade <= 0);
}

interface Piece {
  left: number;
  readonly day: number;
  held: boolean;
}

/** A shop with its lines in start order and, for each, the places of the pieces that fit it, narrowest first. */
export interface PreparedShop extends SimShop {
  readonly fitting: readonly { readonly die: readonly number[]; readonly blade: readonly number[] }[];
  readonly lastDay: number;
}

export function prepared({ lines, tools }: SimShop): PreparedShop {
  const ordered = [...lines].sort((a, b) => a.start - b.start || a.due - b.due || (a.id < b.id ? -1 : 1));
  const places = (kind: SimTool['kind'], size: SimLine['size']) =>
    tools
      .map((tool, at) => ({ tool, at }))
      .filter(({ tool }) => tool.kind === kind && tool.sizes.includes(size))
      .sort((a, b) => a.tool.sizes.length - b.tool.sizes.length || a.at - b.at)
      .map(({ at }) => at);
  return {
    lines: ordered,
    tools,
    fitting: ordered.map(({ size }) => ({ die: places('die', size), blade: places('blade', size) })),
    lastDay: Math.max(...ordered.map(({ due }) => due)),
  };
}

/** Whether every line that runs can hold a piece of its own: every assignment is tried. */
function canAllHold(lines: readonly (readonly number[])[], pieces: readonly Piece[], day: number): boolean {
  const [first, ...rest] = lines;
  if (first === undefined) return true;
  return first.some((at) => {
    const piece = pieces[at];
    if (piece === undefined || piece.day > day || piece.held) return false;
    piece.held = true;
    const fits = canAllHold(rest, pieces, day);
    piece.held = false;
    return fits;
  });
}

function useful(fitting: readonly number[], pieces: readonly Piece[], day: number, line: SimLine): Piece[] {
  return fitting.flatMap((at): Piece[] => {
    const piece = pieces[at];
    const inTime = piece && piece.day <= day && (piece.day < line.due || piece.day <= line.start);
    return piece && inTime && piece.left > 0 ? [piece] : [];
  });
}

/** Ends still to cut after all that the pieces can do. */
function cut(ends: number, perEnd: number, pieces: readonly Piece[], spoils: boolean): number {
  let toCut = ends;
  if (toCut <= 0) return 0;
  for (const piece of pieces) {
    const can = spoils ? Math.floor(piece.left / perEnd) : piece.left / perEnd;
    const now = Math.min(toCut, can);
    toCut -= now;
    // An edge that did not finish the line is worn out, with the end that it was on.
    piece.left = toCut > 1e-9 ? 0 : piece.left - now * perEnd;
    if (toCut <= 1e-9) return 0;
  }
  return toCut;
}

/** Share of futures in which each line was made, in start order. */
export function playOften(shop: SimShop, times: number, seed: number, spoils = false): number[] {
  const chance = chanceOf(seed);
  const ready = prepared(shop);
  const made = shop.lines.map(() => 0);
  for (let n = 0; n < times; n++)
    playOnce(ready, chance, spoils).forEach((ok, i) => {
      if (ok) made[i] = (made[i] ?? 0) + 1;
    });
  return made.map((count) => count / times);
}

/** The same shop as the plan check takes it, its draws from the same distributions by even strata. */
export function planOfShop(
  shop: SimShop,
  base: PlanInput,
  strata: (key: string, count: number) => Float64Array,
): PlanInput {
  const drawCount = 2048;
  const lives = new Map<string, Float64Array>();
  const lifeOf = (tool: SimTool): Float64Array => {
    const known = lives.get(tool.id) ?? strata(`life ${tool.id}`, drawCount).map((u) => drawnLife(tool, u));
    lives.set(tool.id, known);
    return known;
  };
  const byId = new Map(shop.tools.map((tool) => [tool.id, tool]));
  const draws: LifeDraws = {
    drawCount,
    materialFactor: () => new Float64Array(drawCount).fill(1),
    residualLife: (id) => {
      const tool = byId.get(id);
      return tool && lifeOf(tool);
    },
    newLife: (partId) => {
      const tool = byId.get(partId);
      return tool && lifeOf(tool);
    },
  };
  return {
    ...base,
    draws,
    lines: shop.lines.map((line) => ({
      lineId: line.id,
      jobId: line.id,
      connectionId: line.size,
      materialId: 'M',
      endsToMake: line.ends,
      operations: ['cone', 'thread'],
      startOnDay: addDays(base.today, line.start),
      dueOnDay: addDays(base.today, line.due),
      fluidMlPerEnd: 0,
      exposurePerEnd: { cone: line.perEnd.blade, thread: line.perEnd.die },
    })),
    items: [
      ...base.items,
      ...shop.tools
        .filter(({ comes }) => comes === undefined)
        .map((tool) => ({
          toolId: tool.id,
          partId: `part ${tool.id}`,
          role: tool.kind,
          hand: 'LH' as const,
          fitsConnectionIds: tool.sizes,
          state: 'in-crib' as const,
        })),
    ],
    arrivals: shop.tools.flatMap((tool) => {
      const { comes } = tool;
      if (comes === undefined) return [];
      const { medianDays, sdLog } = comes;
      const normal = strata(`day ${tool.id}`, drawCount).map((u) => normalQuantile(u));
      return [
        {
          orderId: `order ${tool.id}`,
          partId: tool.id,
          role: tool.kind,
          hand: 'LH' as const,
          fitsConnectionIds: tool.sizes,
          quantity: 1,
          expectedOnDay: addDays(base.today, Math.max(0, medianDays)),
          arrivalDayDraws: normal.map((z) => Math.round(medianDays * Math.exp(sdLog * z))),
        },
      ];
    }),
  };
}
