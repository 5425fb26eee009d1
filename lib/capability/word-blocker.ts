import { type Day, dayLabel } from '../calendar';
import type { FluidObjection } from '../fluid/permit-fluid';
import { HAND_LABEL, ROLE_LABEL } from '../shop/vocabulary';
import { capital } from '../text/capital';
import type { Blocker, BlockerKind } from './blocker';

/** Words that the caller knows and the verdict does not. */
export interface BlockerWords {
  /** A line as the shop calls it: "job 41, line 2". */
  lineLabel(lineId: string): string;
}

/**
 * One plain sentence for a blocker: what is in the way, which tools, and the day on which it clears where one is known.
 * For the plan screen and slips.
 */
export function wordBlocker(blocker: Blocker, words: BlockerWords): string {
  return `${capital(whatIsWrong(blocker, words))}${clears(blocker)}.`;
}

function whatIsWrong(blocker: Blocker, words: BlockerWords): string {
  const name = blocker.role === null ? '' : ROLE_LABEL[blocker.role];
  const tools = blocker.toolIds.length > 0 ? ` (${blocker.toolIds.join(', ')})` : '';
  switch (blocker.kind) {
    case 'unknown-connection':
      return 'no table row for this size: add it from the fitting maker’s manual';
    case 'unknown-material':
      return 'this material is not in the table: add it before planning with it';
    case 'missing':
      return `no ${name} for this size`;
    case 'hand-mismatch':
      return `hand mismatch: the ${name}${tools} is not marked ${HAND_LABEL[blocker.wanted]}`;
    case 'quarantined':
      return `${name}${tools} is quarantined`;
    case 'needs-first-off':
      return `${name}${tools} waits for its first-off check`;
    case 'out-for-regrind':
      return `${name}${tools} is out for regrind${expected(blocker.backOnDay)}`;
    case 'out-for-calibration':
      return `${name}${tools} is out for calibration${expected(blocker.backOnDay)}`;
    case 'held-elsewhere': {
      const holder = blocker.lineId === null ? 'out on loan' : `with ${words.lineLabel(blocker.lineId)}`;
      const until =
        blocker.untilDay === null ? ', no return day known' : ` until ${dayLabel(blocker.untilDay)}`;
      return `${name}${tools} is ${holder}${until}`;
    }
    case 'calibration-lapses':
      return blocker.dueOnDay === null
        ? `${name}${tools} has no calibration date on record`
        : `${name}${tools} is in calibration only to the end of ${dayLabel(blocker.dueOnDay)}`;
    case 'fluid-not-permitted':
      return `${NOT_PERMITTED[blocker.why]}${tools}`;
    case 'fluid-expired':
      return `cutting fluid${tools} expires on ${dayLabel(blocker.expiresOnDay)}, before the line is done`;
    case 'fluid-short':
      return `cutting fluid is short: about ${wholeMl(blocker.haveMl)} mL for this line, which takes ${wholeMl(blocker.needMl)} mL`;
    case 'life-short':
      return `${name} life is short: ${endsText(blocker.safeEnds)} safe, ${blocker.likelyEnds} likely`;
    case 'no-sure-edge':
      return `no ${name} is sure enough to cut all of a line that cannot be remade, and none is new; the surest is ${blocker.toolIds.join(', ')}`;
  }
}

/** Why none of the fluids will do. */
const NOT_PERMITTED: Record<FluidObjection, string> = {
  material: 'no cutting fluid here is permitted on this material',
  'titanium-chlorinated': 'the cutting fluid here is chlorinated: not on titanium',
  'titanium-unknown':
    'nobody knows whether the cutting fluid here is chlorinated: not on titanium until the supplier has answered',
  duty: 'no cutting fluid here is permitted for this service',
};

/** The day on which the need is met, unless the sentence has just said it. */
function clears(blocker: Blocker): string {
  const { clearsOnDay } = blocker;
  if ('backOnDay' in blocker && blocker.backOnDay === clearsOnDay) return '';
  if (clearsOnDay !== null)
    return `; ${isByShare(blocker) ? 'sure enough by' : 'clears'} ${dayLabel(clearsOnDay)}`;
  return UP_TO_THE_SHOP.includes(blocker.kind) || saysNoDay(blocker) ? '' : '; no date known';
}

/** What clears on a day of the shop's own asking: by then an order is there, or lives are enough, as surely as the line asks. */
const BY_SHARE: readonly BlockerKind[] = ['missing', 'life-short', 'no-sure-edge', 'fluid-short'];

/** Whether the day on which it clears is one by which it is sure enough, and may well be clear before. */
export function isByShare({ kind }: Pick<Blocker, 'kind'>): boolean {
  return BY_SHARE.includes(kind);
}

/** What nobody need wait for: a table row, a check. */
const UP_TO_THE_SHOP: readonly BlockerKind[] = ['unknown-connection', 'unknown-material', 'needs-first-off'];

function saysNoDay(blocker: Blocker): boolean {
  return blocker.kind === 'held-elsewhere' && blocker.untilDay === null;
}

function expected(backOnDay: Day | null): string {
  return backOnDay === null ? '' : `, expected back ${dayLabel(backOnDay)}`;
}

function endsText(ends: number): string {
  return ends === 1 ? '1 end' : `${ends} ends`;
}

function wholeMl(ml: number): number {
  return ml < 10 ? Math.round(ml * 10) / 10 : Math.round(ml);
}
