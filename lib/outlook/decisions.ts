import { addDays, daysBetween } from '../calendar/day';
import { setNeeds } from '../capability/complete-set';
import type { LineVerdict } from '../capability/line-verdict';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import { compareText } from '../text/compare-text';
import { endsToMake, fluidExpiresOnDay } from './plan-facts';
import { pressesNow } from './presses-now';
import type { LineFacts, OrderFacts, ShopFacts, ToolFacts } from './shop-facts';

/** Something that somebody has to decide. `onDay`: the day on which it bites. */
export type Decision = { readonly onDay: string } & (
  | { readonly kind: 'line'; readonly line: LineFacts; readonly verdict: LineVerdict }
  | { readonly kind: 'order-late'; readonly order: OrderFacts }
  | {
      readonly kind: 'gauge-due' | 'fluid-expiring';
      readonly tool: ToolFacts;
      /** Lines that are still running after that day and that it could serve. */
      readonly lineIds: readonly string[];
    }
);

/** How far ahead the front page looks: as far as the plan reaches, within these. */
const LOOK_AHEAD_DAYS = { least: 14, most: 42 };

/**
 * What needs a decision, by harm and by nearness. First what presses (`pressesNow`: it starts within a week, or the last day
 * to order what it lacks is here or past): lines that cannot be cut, lines that cannot be accepted or assembled, lines at
 * risk. Then, in the same order, the lines that leave time: a quote a month off never stands above this week's work. Then
 * orders overdue, then gauges and fluid that run out of date while the plan needs them, then those that do so without a line in
 * sight. Among equals the one that bites first. A gauge or a bottle that a listed line already names is not listed again.
 * For the front page.
 */
export function decisions(facts: ShopFacts, lines: readonly LineVerdict[]): Decision[] {
  const troubled = lineDecisions(facts, lines);
  const named = new Set(
    troubled.flatMap((decision) =>
      decision.kind === 'line' ? decision.verdict.blockers.flatMap(({ toolIds }) => toolIds) : [],
    ),
  );
  const all = [
    ...troubled,
    ...facts.orders.flatMap((order): Decision[] =>
      order.expectedOnDay < facts.today ? [{ kind: 'order-late', onDay: order.expectedOnDay, order }] : [],
    ),
    ...facts.tools.flatMap((tool) => (named.has(tool.id) ? [] : lapsing(tool, facts))),
  ];
  const ranked = all.map((decision) => ({ decision, rank: rankOf(decision, facts) }));
  ranked.sort(
    ({ decision: a, rank }, { decision: b, rank: other }) =>
      rank - other || compareText(a.onDay, b.onDay) || compareText(keyOf(a), keyOf(b)),
  );
  return ranked.map(({ decision }) => decision);
}

function lineDecisions(facts: ShopFacts, verdicts: readonly LineVerdict[]): Decision[] {
  const lines = new Map(facts.lines.map((line) => [line.id, line]));
  return verdicts.flatMap((verdict): Decision[] => {
    const line = lines.get(verdict.lineId);
    if (line === undefined || verdict.verdict === 'can-make') return [];
    return [{ kind: 'line', onDay: line.startOnDay, line, verdict }];
  });
}

/** A gauge or a bottle that runs out of date as far as the front page looks. */
function lapsing(tool: ToolFacts, facts: ShopFacts): Decision[] {
  if (tool.state !== 'in-crib' && tool.state !== 'issued') return [];
  const part = facts.parts.find(({ id }) => id === tool.partId);
  if (part === undefined) return [];
  const isFluid = tool.role === 'fluid';
  if (!isFluid && !CALIBRATED_ROLES.includes(tool.role)) return [];
  if (isFluid && tool.levelMl === 0) return [];
  const onDay = isFluid ? fluidExpiresOnDay(tool, part) : tool.dueOnDay;
  if (onDay === null || onDay > lookAheadDay(facts)) return [];
  const serves = part.fitsConnectionIds;
  const lineIds = facts.lines.flatMap((line) => {
    const runsOn = endsToMake(line) > 0 && (line.dueOnDay > onDay || onDay < facts.today);
    const needs = setNeeds(line.operations).some(({ role }) => role === tool.role);
    return runsOn && needs && (serves.length === 0 || serves.includes(line.connectionId)) ? [line.id] : [];
  });
  return [{ kind: isFluid ? 'fluid-expiring' : 'gauge-due', onDay, tool, lineIds }];
}

/** The last due day of the plan, but at least two weeks and at most six from today. */
function lookAheadDay({ today, lines }: Pick<ShopFacts, 'today' | 'lines'>): string {
  const reach = lines.map(({ dueOnDay }) => daysBetween(today, dueOnDay));
  return addDays(today, Math.min(LOOK_AHEAD_DAYS.most, Math.max(LOOK_AHEAD_DAYS.least, ...reach)));
}

/** 0 to 2: lines that press, the worst first; 3 to 5: lines that leave time; 6 and on: the rest. */
function rankOf(decision: Decision, facts: ShopFacts): number {
  if (decision.kind === 'order-late') return 6;
  if (decision.kind !== 'line') return decision.lineIds.length > 0 ? 7 : 8;
  const { line, verdict } = decision;
  return harm(verdict) + (pressesNow(line, verdict, facts) ? 0 : 3);
}

/** 0: it cannot be cut; 1: it cannot be accepted or assembled; 2: it is at risk. */
function harm({ verdict, blockers }: LineVerdict): 0 | 1 | 2 {
  if (verdict === 'at-risk') return 2;
  const hard = blockers.filter((blocker) => blocker.hard);
  return hard.length === 0 || hard.some(({ phase }) => phase === 'cut') ? 0 : 1;
}

function keyOf(decision: Decision): string {
  if (decision.kind === 'line') return decision.line.id;
  return decision.kind === 'order-late' ? decision.order.id : decision.tool.id;
}
