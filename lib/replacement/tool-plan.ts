import { addDays, type Day, daysBetween } from '../calendar';
import type { Ensemble } from '../ensemble/build-ensemble';
import { type EdgeTask, meanLife } from '../issue-order/edge-task';
import { shopIssues } from '../issue-order/shop-issues';
import type { IssueLine } from '../issue-order/week-plan';
import { isUnknownStart } from '../outlook/edge-histories';
import type { ShopFacts, ToolFacts } from '../outlook/shop-facts';
import type { JobValue } from './change-costs';
import type { LifePosterior } from './life-posterior';
import { ratesAtAge } from './long-run-rates';
import { partLife } from './part-life';
import type { PartReplacement } from './part-replacement';
import { toolReplacement } from './tool-age';
import { dayOfUse, type PlannedUse } from './use-of-tool';

/** When one tool's edge is to be changed. */
export interface ToolPlan {
  readonly toolId: string;
  readonly partId: string;
  /** Of the most demanding line that it is proposed for. */
  readonly value: JobValue;
  /** Whole ends of the part’s own connection that it should still cut; null: run it to wear-out. */
  readonly moreEnds: number | null;
  /** Share of the futures in which it wears out or is lost before. */
  readonly wearsOutFirst: number;
  /** The day of the change, planned or forced; null where none is in sight. */
  readonly lowDay: Day | null;
  readonly onDay: Day | null;
  readonly highDay: Day | null;
  /** Lines of the plan that it is proposed for, in order. */
  readonly lineIds: readonly string[];
  /** False when nobody knows what it had cut before it was entered: the dates are then too hopeful. */
  readonly startKnown: boolean;
}

/** The shortest stretch of plan that a rate of use is taken from. */
const LEAST_DAYS = 28;

/**
 * When every edge of a part that is here is to be changed: at the exposure that costs least given its age and what was seen of
 * it, or when it wears out, whichever comes first in each future. Used up by the lines that it is proposed for, and beyond
 * the plan at the plan's own rate, shared evenly among the edges of the part.
 */
export function toolPlans(facts: ShopFacts, ensemble: Ensemble, found: PartReplacement): ToolPlan[] {
  const { part, kind } = found;
  const lines = shopIssues(facts, ensemble)[kind].flatMap((week) => week.lines);
  const life = partLife(facts, ensemble, { partId: part.id, kind });
  const tools = facts.tools.filter(
    ({ id, partId, state }) =>
      partId === part.id &&
      (state === 'in-crib' || state === 'issued') &&
      ensemble.residualLife(id) !== undefined,
  );
  if (life === undefined) return [];
  const ratePerDay = sharedRate(
    facts.today,
    tools,
    lines.map(({ task }) => task),
    ensemble.drawCount,
  );
  const rates = costRatesByValue(life, found);
  return tools.map((tool) => planOf(tool, { facts, ensemble, found, lines, ratePerDay, rates }));
}

interface Context {
  readonly facts: ShopFacts;
  readonly ensemble: Ensemble;
  readonly found: PartReplacement;
  readonly lines: readonly IssueLine[];
  readonly ratePerDay: Float64Array;
  readonly rates: Readonly<Record<JobValue, Float64Array>>;
}

function planOf(tool: ToolFacts, { facts, ensemble, found, lines, ratePerDay, rates }: Context): ToolPlan {
  const { today } = facts;
  const residual = ensemble.residualLife(tool.id) ?? new Float64Array(ensemble.drawCount);
  const mine = lines.filter(({ succession }) => succession.toolIds[0] === tool.id).map(({ task }) => task);
  const valueOfLine = new Map(facts.lines.map((line) => [line.id, line.value]));
  const value = mine.some(({ lineId }) => valueOfLine.get(lineId) === 'precious') ? 'precious' : 'ordinary';
  const advice = found.byValue[value];
  const best =
    advice.age === null
      ? { moreExposure: null, wearsOutFirst: 1 }
      : toolReplacement(residual, rates[value], advice.costs);
  const most = best.moreExposure ?? Infinity;
  const uses = mine.map(
    ({ startOnDay, dueOnDay, ends, perEnd }): PlannedUse => ({
      startOnDay,
      dueOnDay,
      exposure: perEnd.map((each) => each * ends),
    }),
  );
  const band = dayOfUse(
    residual.map((left) => Math.min(left, most)),
    uses,
    { today, ratePerDay },
  );
  const dayOf = (days: number | null) => (days === null ? null : addDays(today, days));
  const edgeNo = facts.edges.filter(({ toolId }) => toolId === tool.id).length;
  return {
    toolId: tool.id,
    partId: tool.partId,
    value,
    moreEnds: best.moreExposure === null ? null : Math.floor(best.moreExposure / found.perEnd),
    wearsOutFirst: best.wearsOutFirst,
    lowDay: dayOf(band.lowDays),
    onDay: dayOf(band.medianDays),
    highDay: dayOf(band.highDays),
    lineIds: mine.map(({ lineId }) => lineId),
    startKnown: !isUnknownStart(tool, { edgeNo }),
  };
}

/** What a unit of exposure costs in the long run in each draw, changing at the part's best age. */
function costRatesByValue(life: LifePosterior, { byValue }: PartReplacement): Record<JobValue, Float64Array> {
  const ratesOf = (value: JobValue): Float64Array => {
    const { age, costs } = byValue[value];
    return ratesAtAge(life, age, costs);
  };
  return { ordinary: ratesOf('ordinary'), precious: ratesOf('precious') };
}

/** The plan's mean use of a part per day and edge, draw by draw. */
function sharedRate(
  today: Day,
  tools: readonly ToolFacts[],
  tasks: readonly EdgeTask[],
  drawCount: number,
): Float64Array {
  const ids = new Set(tools.map(({ id }) => id));
  const mine = tasks.filter(({ spareIds }) => spareIds.some((id) => ids.has(id)));
  const reach = mine.map(({ dueOnDay }) => daysBetween(today, dueOnDay) + 1);
  const days = Math.max(LEAST_DAYS, ...reach);
  const rate = new Float64Array(drawCount);
  for (const { ends, perEnd } of mine)
    for (let k = 0; k < drawCount; k++)
      rate[k] = (rate[k] as number) + (ends * (perEnd[k] as number)) / days / Math.max(1, tools.length);
  return rate;
}

/** Of two plans the one that comes first; those without a day last, the fullest of them at the end. */
export function compareToolPlans(ensemble: Ensemble): (a: ToolPlan, b: ToolPlan) => number {
  const left = (toolId: string) => meanLife(ensemble.residualLife(toolId) ?? new Float64Array(1));
  return (a, b) => {
    const [first, second] = [a.onDay ?? '9999', b.onDay ?? '9999'];
    if (first !== second) return first < second ? -1 : 1;
    return left(a.toolId) - left(b.toolId) || (a.toolId < b.toolId ? -1 : 1);
  };
}
