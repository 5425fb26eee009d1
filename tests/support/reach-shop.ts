import type { FirstGuess } from '@/lib/life/first-guess';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';
import { streamOfKey } from '@/lib/numeric/random-stream';
import type { BacktestCase } from '@/lib/score/backtest';
import type { LogEvent } from '@/lib/score/log-event';

/** The law that true lives follow in a simulated shop. */
export type TrueLaw = 'weibull' | 'lognormal';

/** A simulated shop: its log, what it typed on its first day, and what a forecaster who knows the truth would have said. */
export interface ReachShop {
  readonly events: readonly LogEvent[];
  readonly guesses: readonly FirstGuess[];
  /** Ends after which this shop changes a die: its own true median in ends of ordinary work, which is generous to the rule. */
  readonly changeAtEnds: (partId: string) => number;
  readonly truly: (made: BacktestCase) => number;
  /** Ends of the case's own work that the edge truly had left, before it wore out or was dropped. */
  readonly trulyLasts: (made: BacktestCase) => number;
}

export interface ReachPlan {
  readonly key: string;
  readonly law: TrueLaw;
  readonly truth: 'as-believed' | 'misjudged';
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
const GUESS_FACTOR = 2;
/** Spread of ln T of a Weibull life of shape 1. Source: formula, π/√6. */
const GUMBEL_SD = Math.PI / Math.sqrt(6);

interface Truth {
  readonly shape: number;
  readonly medians: readonly number[];
  readonly factors: ReadonlyMap<string, number>;
  readonly incidentRate: number;
}

/**
 * Plays a shop's jobs in time order: three sizes of die, three materials, two dies of a size in turn, jobs of 4 to 60 ends
 * that owe nothing to the truth, one incident in 15 to 20 lives.
 */
export function simulateReach(plan: ReachPlan): ReachShop {
  const { key, law } = plan;
  const random = streamOfKey(`reach:${law}:${key}`);
  const gauss = (): number => normalQuantile(random());
  const typed = 1206 * Math.exp(0.5 * gauss());
  const truth = drawTruth(plan.truth, typed, gauss);
  const { events, ends } = playJobs(plan, truth, random);
  return {
    events,
    guesses: [{ partId: partOf(0), odIn: 0.375, lifeBase: typed, factor: GUESS_FACTOR }],
    changeAtEnds: (partId) => {
      const size = SIZES.findIndex((_, i) => partOf(i) === partId);
      return (truth.medians[size] ?? 0) / (TURNS[size] ?? 1);
    },
    truly: (made) => knows(law, truth, made),
    trulyLasts: (made) => {
      const { age, cost } = costOf(truth, made);
      return Math.floor(((ends.get(made.row.toolId) ?? 0) - age) / cost);
    },
  };
}

/**
 * The true figures of a shop, given what it typed about its 3/8 die. As believed: from the model's own priors. Misjudged:
 * shapes evenly over 1.4 to 3.5 (wear more regular than believed), parts and sizes more alike than believed.
 */
function drawTruth(how: ReachPlan['truth'], typed: number, gauss: () => number): Truth {
  const asBelieved = how === 'as-believed';
  const spread = asBelieved
    ? { size: 0.4, part: 0.3, material: 0.4 }
    : { size: 0.2, part: 0.2, material: 0.3 };
  const first = Math.log(typed) + (Math.log(GUESS_FACTOR) / normalQuantile(0.9)) * gauss();
  const parts = SIZES.map(() => spread.part * gauss());
  const exponent = -0.3 + spread.size * gauss();
  const middle = first - (parts[0] ?? 0);
  return {
    shape: asBelieved ? 2 * Math.exp(0.35 * gauss()) : 1.4 + 2.1 * normalCdf(gauss()),
    medians: SIZES.map((odIn, i) => Math.exp(middle + exponent * Math.log(odIn / 0.375) + (parts[i] ?? 0))),
    factors: new Map(
      REACH_MATERIALS.map(({ materialId, factor }) => [
        materialId,
        factor * Math.exp(spread.material * gauss()),
      ]),
    ),
    incidentRate: 1 / ((asBelieved ? 20 : 15) * Math.exp(middle)),
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

function playJobs(plan: ReachPlan, truth: Truth, random: () => number) {
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
    const size = Math.floor(3 * random());
    const mine = rack.filter((edge) => edge.size === size);
    const edge = mine[Math.floor(2 * random())] ?? fetch(size);
    const materialId = ['ref', 'ref', '2507', 'ti'][Math.floor(4 * random())] ?? 'ref';
    const asked = Math.round(4 * 15 ** random());
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

/** The probability that the edge neither wears out nor is dropped, by the true figures. */
function knows(law: TrueLaw, truth: Truth, made: BacktestCase): number {
  const { age, cost } = costOf(truth, made);
  const size = Number(made.row.connectionId.slice(1));
  const life = { median: truth.medians[size] ?? 1, shape: truth.shape };
  const more = (made.prediction.what.ends ?? 0) * cost;
  const lasts = survives(law, life, age + more) / survives(law, life, age);
  return lasts * Math.exp(-truth.incidentRate * more);
}
