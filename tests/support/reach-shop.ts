import type { FirstGuess } from '@/lib/life/first-guess';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';
import { streamOfKey } from '@/lib/numeric/random-stream';
import type { BacktestCase } from '@/lib/score/backtest';
import type { LogEvent } from '@/lib/score/log-event';
import { GUESS_FACTOR, type ReachWorld, type TrueLaw, WORLDS, type WorldName } from './reach-worlds';

/** A simulated shop: its log, what it typed on its first day, and what a forecaster who knows the truth would have said. */
export interface ReachShop {
  readonly events: readonly LogEvent[];
  readonly guesses: readonly FirstGuess[];
  /** Ends after which this shop changes a die: its own true median in ends of ordinary work, which is generous to the rule. */
  readonly changeAtEnds: (partId: string) => number;
  /** The probability that the edge of the case has so many ends of the case's own work left, by the true figures. */
  readonly truly: (made: BacktestCase, ends: number) => number;
  /** Ends of the case's own work that the edge truly had left, before it wore out or was dropped. */
  readonly trulyLasts: (made: BacktestCase) => number;
}

export interface ReachPlan {
  readonly key: string;
  readonly law: TrueLaw;
  readonly truth: WorldName;
  readonly jobs: number;
  /** Share of jobs before which someone grades the edge with a true error of 0.15 of its life. */
  readonly readingShare?: number;
}

const SIZES = [0.375, 0.5625, 0.75];
const TURNS = [10.5, 9, 9];
/** Published factor of each material: what the shop believes before its own log speaks. */
export const REACH_MATERIALS = [
  { materialId: '2507', factor: 2.5 },
  { materialId: 'ti', factor: 1.5 },
];
const READING_SD = 0.15;
/** Spread of ln T of a Weibull life of shape 1. Source: formula, π/√6. */
const GUMBEL_SD = Math.PI / Math.sqrt(6);

interface Truth {
  readonly shape: number;
  readonly medians: readonly number[];
  readonly factors: ReadonlyMap<string, number>;
  readonly incidentRate: number;
}

/** Plays a shop's jobs in time order: jobs that owe nothing to the truth, dies of a size in turn, incidents by chance. */
export function simulateReach(plan: ReachPlan): ReachShop {
  const { key, law } = plan;
  const world = WORLDS[plan.truth];
  const random = streamOfKey(`reach:${law}:${key}`);
  const gauss = (): number => normalQuantile(random());
  const middle = world.typed ? Math.log(1206) + 0.5 * gauss() : Math.log(1206) + 0.7 * gauss();
  const guess = { partId: partOf(0), odIn: 0.375, lifeBase: Math.exp(middle), factor: GUESS_FACTOR };
  const truth = drawTruth(world, middle, gauss);
  const { events, ends } = playJobs(plan, world, truth, random);
  return {
    events,
    guesses: world.typed ? [guess] : [],
    changeAtEnds: (partId) => {
      const size = SIZES.findIndex((_, i) => partOf(i) === partId);
      return (truth.medians[size] ?? 0) / (TURNS[size] ?? 1);
    },
    truly: (made, more) => knows(law, truth, made, more),
    trulyLasts: (made) => {
      const { age, cost } = costOf(truth, made);
      return Math.floor(((ends.get(made.row.toolId) ?? 0) - age) / cost);
    },
  };
}

/** The true figures of a shop, given the log of what it typed about its 3/8 die (nothing typed: of the default life itself). */
function drawTruth(world: ReachWorld, typed: number, gauss: () => number): Truth {
  const { spread, guessMiss, shape, livesPerIncident } = world;
  const first = world.typed ? typed + guessMiss(gauss) : typed;
  const parts = SIZES.map(() => spread.part * gauss());
  const exponent = -0.3 + spread.size * gauss();
  const middle = world.typed ? first - (parts[0] ?? 0) : first;
  return {
    shape: shape(gauss),
    medians: SIZES.map((odIn, i) => Math.exp(middle + exponent * Math.log(odIn / 0.375) + (parts[i] ?? 0))),
    factors: new Map(
      REACH_MATERIALS.map(({ materialId, factor }) => [
        materialId,
        factor * Math.exp(spread.material * gauss()),
      ]),
    ),
    incidentRate: 1 / (livesPerIncident * Math.exp(middle)),
  };
}

function partOf(size: number): string {
  return `die-${size}`;
}

interface Edge {
  readonly toolId: string;
  readonly size: number;
  readonly life: number;
  readonly dropsAt: number;
  exposure: number;
}

function playJobs(plan: ReachPlan, world: ReachWorld, truth: Truth, random: () => number) {
  const events: LogEvent[] = [];
  const ends = new Map<string, number>();
  const rack: Edge[] = [];
  let tools = 0;
  const fetch = (size: number): Edge => {
    const toolId = `T${tools++}`;
    const life = drawLife(plan.law, { median: truth.medians[size] ?? 1, shape: truth.shape }, random());
    const edge = { toolId, size, life, dropsAt: -Math.log(random()) / truth.incidentRate, exposure: 0 };
    const odIn = SIZES[size] ?? 0.375;
    const name = { toolId, edgeNo: 1, kind: 'die' as const, partId: partOf(size), odIn, regrinds: 0 };
    events.push({ type: 'began', ...name, startKnown: true });
    rack.push(edge);
    ends.set(toolId, Math.min(life, edge.dropsAt));
    return edge;
  };
  for (let job = 0; job < plan.jobs; job++) {
    const size = Math.floor(world.sizes * random());
    const mine = rack.filter((edge) => edge.size === size);
    const edge = mine[Math.floor(world.inTurn * random())] ?? fetch(size);
    const materialId = world.materials[Math.floor(world.materials.length * random())] ?? 'ref';
    const asked = Math.round(world.ends.from * world.ends.times ** random());
    const name = { toolId: edge.toolId, edgeNo: 1 };
    if (random() < (plan.readingShare ?? 0)) {
      const worn = edge.exposure / edge.life + READING_SD * normalQuantile(random());
      events.push({ type: 'read', ...name, worn, sd: READING_SD });
    }
    const exposurePerEnd = TURNS[size] ?? 10;
    const cost = exposurePerEnd * (truth.factors.get(materialId) ?? 1);
    const untilWorn = Math.max(1, Math.ceil((edge.life - edge.exposure) / cost));
    const untilDropped = Math.max(1, Math.ceil((edge.dropsAt - edge.exposure) / cost));
    const ends = Math.min(asked, untilWorn, untilDropped);
    const worn = untilWorn <= Math.min(asked, untilDropped);
    const row = { connectionId: `c${size}`, materialId, dry: false, rework: false, exposurePerEnd };
    const atMs = job * 3_600_000;
    const goodEnds = worn ? ends - 1 : ends;
    events.push({ type: 'cut', atMs, ...name, ...row, ends, goodEnds, askedEnds: asked });
    edge.exposure += ends * cost;
    const retired = random() < 0.02;
    const over = worn || untilDropped <= asked;
    if (!over && !retired) continue;
    events.push({ type: 'ended', atMs, ...name, how: worn ? 'worn' : over ? 'incident' : 'removed-working' });
    rack.splice(rack.indexOf(edge), 1);
  }
  return { events, ends };
}

function drawLife(law: TrueLaw, { median, shape }: { median: number; shape: number }, u: number): number {
  if (law === 'weibull') return median * (-Math.log(u) / Math.LN2) ** (1 / shape);
  return median * Math.exp((GUMBEL_SD / shape) * normalQuantile(u));
}

function survives(law: TrueLaw, { median, shape }: { median: number; shape: number }, age: number): number {
  if (law === 'weibull') return Math.exp(-Math.LN2 * (age / median) ** shape);
  return normalCdf((-Math.log(age / median) * shape) / GUMBEL_SD);
}

/** Reference exposure that the edge truly had at the case's row, and what an end of its work truly costs. */
function costOf(truth: Truth, { row, exposure }: BacktestCase): { age: number; cost: number } {
  const factor = (materialId: string): number => truth.factors.get(materialId) ?? 1;
  const age = exposure.reduce((sum, part) => sum + part.base * factor(part.materialId), 0);
  return { age, cost: row.exposurePerEnd * factor(row.materialId) };
}

/** The probability that the edge neither wears out nor is dropped within so many ends, by the true figures. */
function knows(law: TrueLaw, truth: Truth, made: BacktestCase, ends: number): number {
  const { age, cost } = costOf(truth, made);
  const size = Number(made.row.connectionId.slice(1));
  const life = { median: truth.medians[size] ?? 1, shape: truth.shape };
  const more = ends * cost;
  const lasts = survives(law, life, age + more) / survives(law, life, age);
  return lasts * Math.exp(-truth.incidentRate * more);
}
