import { ok, type Refusal, type Result, refuse } from '../result';
import type { AppliedRule } from '../shop/acceptance';
import type { RejectCause, Role } from '../shop/vocabulary';
import type { ExposedThreads } from './applied-rule';
import { type EndFault, type EndsSeen, endFaults } from './end-faults';
import { checkGauge, type GaugeFacts, type GaugeUse } from './gauge-fit';
import { missingGauges } from './required-gauges';

/** What ends are decided from: what was seen, the gauges as the record has them, the rules. */
export interface AcceptanceFacts {
  readonly seen: EndsSeen;
  readonly use: GaugeUse;
  /** The gauges named, by the ID in `seen.gauges`. */
  readonly gauge: (toolId: string) => GaugeFacts | undefined;
  readonly rule: AppliedRule | null;
  readonly exposed: ExposedThreads;
}

export interface AcceptanceDecision {
  readonly decision: 'accepted' | 'refused';
  readonly cause: RejectCause | null;
  /** Everything that speaks against the ends; empty where they are accepted. */
  readonly faults: readonly EndFault[];
  /** Gauges that the work asks for and nobody recorded: accepted so, they are not releasable. */
  readonly gaugesMissing: readonly Role[];
}

/**
 * Decides whether ends are accepted. Stops with a sentence where it cannot be decided: a gauge of the wrong kind, size or
 * hand, set aside or out of date; NOT GO without the turns it ran on, or without a written rule to hold them against
 * (nobody may assume one); a bore that nobody looked through. Any one result against the ends refuses them. Ends without
 * the gauges that the work asks for are accepted as seen, and are not releasable. This says nothing about whether a joint
 * may be put under pressure.
 */
export function decideAcceptance(facts: AcceptanceFacts): Result<AcceptanceDecision, Refusal> {
  const { seen, rule } = facts;
  for (const used of seen.gauges) {
    if (used.verdict === 'not-used') continue;
    const checked = checkGauge(used, facts.gauge(used.toolId), facts.use);
    if (!checked.ok) return checked;
  }
  const asked = checkAsked(seen);
  if (!asked.ok) return asked;
  const faults = endFaults(seen, rule, facts.exposed);
  const gaugesMissing = missingGauges(seen.operations, seen.gauges);
  const [first] = faults;
  if (first !== undefined) return ok({ decision: 'refused', cause: first.cause, faults, gaugesMissing });
  if (usedNotGo(seen) && rule === null)
    return refuse(
      'no-rule',
      'No rule says how far NOT GO may run on: not on the job, not in the size table, not in the settings. Ask the lead to write it down; nobody may assume one.',
      'rule',
    );
  if (!seen.boreClear)
    return refuse('bore', 'Look through the bore, swab it, and say that it is clear.', 'boreClear');
  return ok({ decision: 'accepted', cause: null, faults: [], gaugesMissing });
}

function usedNotGo({ gauges }: EndsSeen): boolean {
  return gauges.some(({ role, verdict }) => role === 'not-go-ring' && verdict !== 'not-used');
}

function checkAsked({ gauges }: EndsSeen): Result<null, Refusal> {
  const silent = gauges.find(
    ({ role, verdict, turns }) => role === 'not-go-ring' && verdict === 'pass' && turns === null,
  );
  if (silent !== undefined)
    return refuse('turns', `Say how far ${silent.toolId} ran on: none, half a turn, one …`, 'turns');
  return ok(null);
}
