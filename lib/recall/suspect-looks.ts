import type { Day } from '../calendar';
import type { GaugeResult } from '../shop/acceptance';
import type { Suspect } from '../shop/recall';
import { isInWindow, type RecallWindow } from './recall-window';

/** One look at ends with the gauge, as the record has it. */
export interface GaugeLook {
  readonly acceptanceId: string;
  readonly endCount: number;
  readonly decision: 'accepted' | 'refused';
  readonly verdict: GaugeResult['verdict'];
  readonly gaugedAtMs: number;
  readonly gaugedOnDay: Day;
}

/** What a recall lists: ends accepted with the gauge in the window, and looks at which it refused ends. */
export interface RecallList {
  readonly suspects: readonly Suspect[];
  readonly refusedIds: readonly string[];
}

/**
 * Every end that was accepted with the gauge inside the window, and every look at which the gauge refused ends there
 * (they may have been good). A gauge that lay by and was not used says nothing.
 */
export function listSuspects(
  looks: readonly GaugeLook[],
  window: Pick<RecallWindow, 'evidenceOnDay' | 'windowFromMs' | 'windowToMs'>,
): RecallList {
  const inside = looks.filter(
    ({ verdict, gaugedAtMs: atMs, gaugedOnDay: onDay }) =>
      verdict !== 'not-used' && isInWindow({ atMs, onDay }, window),
  );
  const accepted = inside.filter(({ decision, verdict }) => decision === 'accepted' && verdict === 'pass');
  const refused = inside.filter(({ decision, verdict }) => decision === 'refused' && verdict === 'fail');
  return {
    suspects: accepted.map(({ acceptanceId, endCount }) => ({ acceptanceId, endCount })),
    refusedIds: refused.map(({ acceptanceId }) => acceptanceId),
  };
}
