import { addDays, type Day } from '../calendar/day';
import { weekStartDay } from '../calendar/iso-week';
import { checkPlan, type PlanInput } from './check-plan';
import { laterDay } from './line-order';
import type { LineVerdict, Verdict } from './line-verdict';
import type { PlanLine } from './plan-input';
import { oneEnd, type SizeProbe } from './size-status';

/** One size in one week: could one more end be made, once the plan has had what it needs? */
export interface WeekCell extends Omit<LineVerdict, 'lineId' | 'jobId'> {
  readonly weekStartOnDay: Day;
  /** Ends of this size that the plan has in this week: lines that are running in it. */
  readonly lineIds: readonly string[];
}

export interface WeekRow {
  readonly connectionId: string;
  readonly cells: readonly WeekCell[];
}

export interface WeekGridInput extends PlanInput {
  readonly sizes: readonly SizeProbe[];
  /** The material in which the question is asked. */
  readonly materialId: string;
  readonly weekCount: number;
}

const DAYS = { monday: 0, friday: 4, sunday: 6 };
const RANK: Record<Verdict, number> = { 'can-make': 2, 'at-risk': 1, 'cannot-make-now': 0 };

/**
 * What can be made, by size and week: one end asked for on the first and on the last working day of every week, behind all
 * lines of the plan, on the same futures; the better of the two answers counts. `likelyEnds` and `safeEnds` are what the
 * edges have for more ends that week, the plan's own already taken off. Gauges that run out and orders that come show in
 * the weeks in which they do. In the order of the sizes given. Domain: weekCount ≥ 1.
 */
export function weekGrid({ sizes, materialId, weekCount, ...plan }: WeekGridInput): WeekRow[] {
  const weeks = Array.from({ length: weekCount }, (_, n) => addDays(weekStartDay(plan.today), 7 * n));
  const asked = sizes.flatMap((size) =>
    weeks.flatMap((week) => askedDays(week, plan.today).map((day) => question(size, materialId, week, day))),
  );
  const verdicts = checkPlan({ ...plan, lines: [...plan.lines, ...asked] });
  const answers = new Map(verdicts.map((verdict) => [verdict.lineId, verdict]));
  return sizes.map((size) => ({
    connectionId: size.connectionId,
    cells: weeks.map((week): WeekCell => {
      const days = askedDays(week, plan.today).map((day) =>
        answers.get(questionId(size.connectionId, week, day)),
      );
      const { lineId: _line, jobId: _job, ...best } = days.flatMap((one) => one ?? []).reduce(better);
      return { ...best, weekStartOnDay: week, lineIds: linesOf(plan.lines, size.connectionId, week) };
    }),
  }));
}

/** The first and the last working day of a week, not before today; one where they are the same. */
function askedDays(week: Day, today: Day): Day[] {
  const first = laterDay(addDays(week, DAYS.monday), today);
  const last = laterDay(addDays(week, DAYS.friday), today);
  return first === last ? [first] : [first, last];
}

function questionId(connectionId: string, week: Day, day: Day): string {
  return `~ask ${connectionId} ${week} ${day}`;
}

function question(size: SizeProbe, materialId: string, week: Day, day: Day): PlanLine {
  const lineId = questionId(size.connectionId, week, day);
  return { ...oneEnd(size, materialId, day), lineId, asksOnly: true };
}

function better(a: LineVerdict, b: LineVerdict): LineVerdict {
  if (RANK[a.verdict] !== RANK[b.verdict]) return RANK[b.verdict] > RANK[a.verdict] ? b : a;
  if (a.likelyEnds !== b.likelyEnds) return (b.likelyEnds ?? 0) > (a.likelyEnds ?? 0) ? b : a;
  return (b.safeEnds ?? 0) > (a.safeEnds ?? 0) ? b : a;
}

function linesOf(lines: readonly PlanLine[], connectionId: string, week: Day): string[] {
  const last = addDays(week, DAYS.sunday);
  return lines.flatMap((line) =>
    line.connectionId === connectionId &&
    line.endsToMake > 0 &&
    line.startOnDay <= last &&
    line.dueOnDay >= week
      ? [line.lineId]
      : [],
  );
}
