import { addDays, type Day, daysBetween } from '../../calendar/day';
import { arrivalDayAt } from '../../capability/arrival-day';
import { laterDay } from '../../capability/line-order';
import { endsToMake } from '../../outlook/plan-facts';
import { shopPlan } from '../../outlook/shop-plan';
import type { Change } from '../change';
import { askLine, pricedWay, type WayQuestion } from './ask-way';
import type { PricedWay } from './priced-way';

/** Later than this a start is not looked for. */
const LOOK_AHEAD_DAYS = 180;
/** Shares of the draws by which an order is there: the days between which its coming makes a difference. */
const SHARES = [0.5, 0.8, 0.9, 0.95, 0.99] as const;
const TRIES_MAX = 14;

/** The line moved to start on another day, as long as it was. */
export function datesFrom(
  { line, facts }: WayQuestion,
  startOnDay: Day,
): Extract<Change, { kind: 'change-dates' }> {
  const length = Math.max(0, daysBetween(laterDay(line.startOnDay, facts.today), line.dueOnDay));
  return { kind: 'change-dates', lineId: line.id, startOnDay, dueOnDay: addDays(startOnDay, length) };
}

/**
 * The earliest later start on which the line can be made with what the shop has and what is on its way. Tries the days on
 * which something comes, comes back or is free again, then halves the days before the first that does. Undefined when
 * there is none within half a year.
 */
export function laterStartWay(question: WayQuestion): PricedWay | undefined {
  const isMade = (day: Day): boolean => askLine(question, [datesFrom(question, day)])?.verdict === 'can-make';
  const days = turningDays(question).slice(0, TRIES_MAX);
  const at = days.findIndex(isMade);
  let good = days[at];
  if (good === undefined) return undefined;
  let bad = days[at - 1] ?? laterDay(question.line.startOnDay, question.facts.today);
  while (daysBetween(bad, good) > 1) {
    const middle = addDays(bad, Math.floor(daysBetween(bad, good) / 2));
    if (isMade(middle)) good = middle;
    else bad = middle;
  }
  const change = datesFrom(question, good);
  const { startOnDay, dueOnDay } = change;
  return pricedWay(question, {
    actions: [{ kind: 'start', startOnDay, dueOnDay }],
    changes: [change],
    costMinor: 0,
  });
}

/** Days after the line's start on which the answer can turn, soonest first. */
function turningDays({ facts, ensemble, line, verdict }: WayQuestion): Day[] {
  const plan = shopPlan(facts, ensemble);
  const days = [
    ...plan.lines.map(({ dueOnDay }) => addDays(laterDay(dueOnDay, facts.today), 1)),
    ...plan.items.flatMap(({ backOnDay }) => backOnDay ?? []),
    ...plan.arrivals.flatMap(({ arrivalDayDraws, expectedOnDay }) =>
      arrivalDayDraws === undefined
        ? [expectedOnDay]
        : SHARES.flatMap((share) => arrivalDayAt(arrivalDayDraws, share, facts.today) ?? []),
    ),
    ...verdict.blockers.flatMap(({ clearsOnDay }) => clearsOnDay ?? []),
  ];
  const start = laterDay(line.startOnDay, facts.today);
  const last = addDays(start, LOOK_AHEAD_DAYS);
  return [...new Set(days)].filter((day) => day > start && day <= last).sort();
}

/** Some of the ends now, as many as are safe, the rest when there are more edges. Only where nothing but life is short. */
export function splitWay(question: WayQuestion): PricedWay | undefined {
  const { line, verdict } = question;
  const endsNow = verdict.safeEnds ?? 0;
  const toMake = endsToMake(line);
  if (verdict.blockers.some(({ hard }) => hard) || endsNow < 1 || endsNow >= toMake) return undefined;
  return pricedWay(question, {
    actions: [{ kind: 'split', endsNow, endsLater: toMake - endsNow }],
    changes: [{ kind: 'change-ends', lineId: line.id, ends: line.ends - toMake + endsNow }],
    costMinor: 0,
  });
}
