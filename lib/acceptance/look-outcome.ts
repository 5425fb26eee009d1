import type { Acceptance } from '../shop/acceptance';
import type { Role } from '../shop/vocabulary';

/** What a look came to: passed, refused, or looked at without every gauge that the work asks for. */
export type LookOutcome = 'passed' | 'refused' | 'not-gauged';

/** As much of a look as its outcome asks for. */
export interface Looked {
  readonly decision: Acceptance['decision'];
  readonly gaugesMissing: readonly Role[];
}

/**
 * Outcome of a look. Accepted by eye, with a gauge missing, is not passed: the ends are held, and a first-off or last-off
 * of that kind proves nothing about the run. Source: common practice, no source.
 * @example lookOutcome({ decision: 'accepted', gaugesMissing: ['go-ring'] }) // => "not-gauged"
 * @example lookOutcome({ decision: 'accepted', gaugesMissing: [] }) // => "passed"
 */
export function lookOutcome({ decision, gaugesMissing }: Looked): LookOutcome {
  if (decision === 'refused') return 'refused';
  return gaugesMissing.length === 0 ? 'passed' : 'not-gauged';
}
