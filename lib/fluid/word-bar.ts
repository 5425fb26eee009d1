import { type Day, dayLabel, daysBetween } from '../calendar';
import { DUTY_LABEL } from '../shop/duty';
import type { FluidWork } from './permit-fluid';
import type { Bottle, BottleStanding } from './pick-first';

/**
 * Why a bottle is not to be used, in a sentence, with the day and the life where it is over one. For issue and for the screens.
 */
export function wordBar<B extends Bottle>(
  { bottle, bar }: BottleStanding<B>,
  work: FluidWork,
  today: Day,
): string | null {
  if (bar === null) return null;
  const id = bottle.toolId;
  switch (bar.why) {
    case 'set-aside':
      return `${id} is set aside.`;
    case 'empty':
      return `${id} is empty.`;
    case 'titanium-chlorinated':
      return `${id} is chlorinated: not on titanium.`;
    case 'titanium-unknown':
      return `${id} may be chlorinated, nobody knows: not on titanium until the supplier has answered.`;
    case 'material':
      return `${id} is not permitted on this material.`;
    case 'duty':
      return `${id} is not flagged for ${DUTY_LABEL[work.duty]}.`;
    case 'over-life':
      return overLife(bottle, bar.useBy, today);
  }
}

function overLife(
  bottle: Bottle,
  useBy: { readonly onDay: Day | null; readonly by: string | null },
  today: Day,
): string {
  const { toolId, openedOnDay, openedLifeDays } = bottle;
  const ended = useBy.onDay === null ? '' : `: its day was ${dayLabel(useBy.onDay)}`;
  if (useBy.by !== 'opened life' || openedOnDay === null || openedLifeDays === null)
    return `${toolId} is past its ${useBy.by ?? 'life'}${ended}.`;
  const open = months(daysBetween(openedOnDay, today));
  return `${toolId} was opened ${open} ago and keeps ${months(openedLifeDays)}${ended}.`;
}

/** Whole months of 365 ÷ 12 days, rounded down; days where it is less than one. */
function months(days: number): string {
  const whole = Math.floor((days * 12) / 365 + 1e-9);
  if (whole < 1) return days === 1 ? '1 day' : `${days} days`;
  return whole === 1 ? '1 month' : `${whole} months`;
}
