import { monthDay } from './calendar';

/** A box of blades on its way to the grinder and back; days from today. */
export interface RegrindTrip {
  readonly outOffset: number;
  readonly backOffset: number;
}

const EVERY_DAYS = 10;
const AWAY_DAYS = 6;

/** The box that came back in month 5 burnt blue. It had waited, half filled, for more than three weeks. */
export const SPOILT_TRIP: RegrindTrip = { outOffset: monthDay(5, 12), backOffset: monthDay(5, 18) };

/** When boxes go out and come back; the last one is still out. */
export const REGRIND_TRIPS: readonly RegrindTrip[] = [
  ...Array.from({ length: Math.floor(535 / EVERY_DAYS) }, (_, index) => {
    const outOffset = -540 + EVERY_DAYS * index;
    return { outOffset, backOffset: outOffset + AWAY_DAYS };
  }).filter(
    ({ outOffset }) =>
      outOffset < -16 && (outOffset < SPOILT_TRIP.outOffset - 26 || outOffset > SPOILT_TRIP.outOffset),
  ),
  SPOILT_TRIP,
  { outOffset: -4, backOffset: 6 },
].sort((a, b) => a.outOffset - b.outOffset);
