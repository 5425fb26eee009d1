import type { Day } from '../calendar/day';
import type { FluidWork } from './permit-fluid';
import { type Bottle, type BottleBar, type BottleStanding, bottleStanding, pickFirst } from './pick-first';
import { wordBar } from './word-bar';

/** Why a bottle may not be used on some work, in a sentence that names the one to use instead. */
export interface BottleRefusal {
  readonly why: BottleBar['why'];
  readonly sentence: string;
}

/** On loan nobody knows on what: only its life and what is left of it count. */
const ON_LOAN: FluidWork = { materialId: '', titanium: false, duty: 'ordinary' };

/**
 * Whether a bottle may go out, or be used, for some work on a day: null where it may, else why not and which of the others
 * to use. `work` null is a loan. The one judgement of fluid: for the scan and the proposal at the counter, the bench,
 * and the issue itself. First expired, first out.
 */
export function judgeBottle(
  bottle: Bottle,
  others: readonly Bottle[],
  work: FluidWork | null,
  today: Day,
): BottleRefusal | null {
  const asked = work ?? ON_LOAN;
  const seen = (one: Bottle): Bottle =>
    work === null ? { ...one, permittedMaterialIds: 'all', permittedDuties: ['ordinary'] } : one;
  const standing = bottleStanding(seen(bottle), asked, today);
  const sentence = wordBar(standing, asked, today);
  if (standing.bar === null || sentence === null) return null;
  const rest = others.filter(({ toolId }) => toolId !== bottle.toolId).map(seen);
  return { why: standing.bar.why, sentence: `${sentence} ${wordInstead(pickFirst(rest, asked, today))}` };
}

/** The one to use instead: what lies in the crib before what somebody has. */
function wordInstead(able: readonly BottleStanding<Bottle>[]): string {
  const here = able.find(({ bottle }) => bottle.state === 'in-crib');
  if (here !== undefined) return `Use ${here.bottle.toolId} first.`;
  const [out] = able;
  return out === undefined
    ? 'No other bottle here will do: see Fluid for what can be ordered.'
    : `${out.bottle.toolId} will do, but it is out.`;
}
