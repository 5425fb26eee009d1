import { type Day, daysBetween } from '../calendar';

/** A line that a tool is to cut: from when to when, and what it takes out of the edge in each draw. */
export interface PlannedUse {
  readonly startOnDay: Day;
  readonly dueOnDay: Day;
  readonly exposure: Float64Array;
}

/** Days from today in the middle and the 10–90 % band; null where that share of the futures has no day in sight. */
export interface DayBand {
  readonly lowDays: number | null;
  readonly medianDays: number | null;
  readonly highDays: number | null;
}

/** Days beyond which nobody plans a change. */
const IN_SIGHT_DAYS = 366;

/**
 * When an edge will have cut so much more: `amount[k]` in draw k, spent by the lines that it is to cut, each spread evenly
 * over its days, and after the last of them at `ratePerDay[k]`. As a band over the draws.
 * Source: formula (counts over the draws).
 */
export function dayOfUse(
  amount: Float64Array,
  uses: readonly PlannedUse[],
  { today, ratePerDay }: { today: Day; ratePerDay: Float64Array },
): DayBand {
  const spans = uses.map(({ startOnDay, dueOnDay, exposure }) => ({
    exposure,
    from: Math.max(0, daysBetween(today, startOnDay)),
    to: Math.max(0, daysBetween(today, dueOnDay)) + 1,
  }));
  const end = spans.reduce((last, { to }) => Math.max(last, to), 0);
  const days = amount.map((wanted, k) => {
    let togo = wanted;
    for (const { exposure, from, to } of spans) {
      const takes = exposure[k] as number;
      if (togo <= takes) return from + (to - from) * (togo / takes);
      togo -= takes;
    }
    const rate = ratePerDay[k] as number;
    return rate > 0 ? end + togo / rate : Infinity;
  });
  days.sort();
  const at = (share: number): number | null => {
    const day = days[Math.min(days.length - 1, Math.floor(share * days.length))] as number;
    return day <= IN_SIGHT_DAYS ? Math.floor(day) : null;
  };
  return { lowDays: at(0.1), medianDays: at(0.5), highDays: at(0.9) };
}
