import { addDays, type Day } from '../calendar';
import { compareText } from '../text/compare-text';
import { compareTasks, overlaps } from './edge-task';
import type { IssueLine, IssueWeek } from './week-plan';

/** A tool that a line without one can have later. */
export interface HandOver {
  readonly toolId: string;
  readonly onDay: Day;
  readonly fromLineId: string | null;
}

/**
 * Of the tools that fit the one that is free first: when it is back, or the day after the line before it is due.
 * For "two benches want the only die": who has it first, and when it is handed over.
 */
export function handOverOf({ task }: Pick<IssueLine, 'task'>, weeks: readonly IssueWeek[]): HandOver | null {
  const lines = weeks.flatMap((week) => week.lines);
  const offers = [...task.freeFromDay].map(([toolId, freeDay]): HandOver => {
    const holders = lines.filter(
      (other) => other.task.lineId !== task.lineId && other.succession.toolIds.includes(toolId),
    );
    const last = holders
      .filter((other) => overlaps(other.task, task))
      .sort((a, b) => compareText(b.task.dueOnDay, a.task.dueOnDay) || compareTasks(a.task, b.task))[0];
    const after = last === undefined ? freeDay : addDays(last.task.dueOnDay, 1);
    return last === undefined || after < freeDay
      ? { toolId, onDay: freeDay, fromLineId: null }
      : { toolId, onDay: after, fromLineId: last.task.lineId };
  });
  return offers.sort((a, b) => compareText(a.onDay, b.onDay) || compareText(a.toolId, b.toolId))[0] ?? null;
}
