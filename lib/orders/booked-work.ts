import type { NeedLine } from './need-walk';

/**
 * Exposure that the lines on the books bring one part (its index) within so many days, per draw: amount × factor × the
 * share of the line that is cut by then, its ends spread evenly from start to due day. So a line that runs on beyond the
 * days asked about does not pass for work of these days. Domain: days of 0 or more, factors one per draw. Source: formula.
 */
export function bookedWork(
  lines: readonly NeedLine[],
  part: number,
  withinDays: number,
  drawCount: number,
): Float64Array {
  const sum = new Float64Array(drawCount);
  for (const line of lines) {
    const amount = line.part === part ? line.amount * shareWithin(line, withinDays) : 0;
    if (amount === 0) continue;
    for (let k = 0; k < drawCount; k++) sum[k] = (sum[k] as number) + amount * (line.weights[k] as number);
  }
  return sum;
}

function shareWithin({ startInDays, dueInDays }: NeedLine, days: number): number {
  if (startInDays > days) return 0;
  return dueInDays <= days ? 1 : (days - startInDays) / (dueInDays - startInDays);
}
