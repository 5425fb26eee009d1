import type { Acceptance, AppliedRule, GaugeResult } from '../shop/acceptance';
import type { RejectCause, Role } from '../shop/vocabulary';
import { REJECT_CAUSES } from '../shop/vocabulary';
import { type ExposedThreads, ruleText } from './applied-rule';
import { turnsText } from './turns-text';

/** What was seen of the ends, as far as it can speak against them. */
export type EndsSeen = Pick<
  Acceptance,
  'operations' | 'gauges' | 'finish' | 'coneContact' | 'exposedThreads' | 'boreClear' | 'otherFault'
>;

/** One thing that speaks against the ends: the cause it is logged under, and the sentence. */
export interface EndFault {
  readonly cause: RejectCause;
  readonly sentence: string;
}

/**
 * Everything that speaks against the ends, worst first: rings, cone, length, surface. Every result counts by itself: where
 * two people or two rings disagree, the one that refuses decides, and nothing is averaged. Without a rule NOT GO's turns
 * say nothing here. Source: what each gauge means is after ASME B1.2 as quoted in gauging notes; the rest is common practice.
 */
export function endFaults(seen: EndsSeen, rule: AppliedRule | null, exposed: ExposedThreads): EndFault[] {
  const cone = seen.operations.includes('cone');
  const thread = seen.operations.includes('thread');
  return [
    ...failed(seen.gauges, 'go-ring', 'go-tight', 'The GO ring will not run on.'),
    ...notGoFaults(seen.gauges, rule),
    ...failed(seen.gauges, 'cone-gauge', 'cone-angle', 'The cone gauge refuses it.'),
    ...(cone ? contactFaults(seen) : []),
    ...failed(seen.gauges, 'length-gauge', 'length', 'The thread-length gauge refuses it.'),
    ...(thread ? exposedFaults(seen.exposedThreads, exposed) : []),
    ...finishFaults(seen),
    ...otherFaults(seen),
  ];
}

function failed(
  gauges: readonly GaugeResult[],
  role: Role,
  cause: RejectCause,
  sentence: string,
): EndFault[] {
  const refuses = gauges.some((gauge) => gauge.role === role && gauge.verdict === 'fail');
  return refuses ? [{ cause, sentence }] : [];
}

function notGoFaults(gauges: readonly GaugeResult[], rule: AppliedRule | null): EndFault[] {
  const used = gauges.filter(({ role, verdict }) => role === 'not-go-ring' && verdict !== 'not-used');
  const turns = Math.max(0, ...used.map((gauge) => gauge.turns ?? 0));
  const beyond = rule !== null && turns > rule.notGoTurnsMax;
  if (!beyond && used.every(({ verdict }) => verdict !== 'fail')) return [];
  const allowed = rule === null ? '' : ` The rule: at most ${ruleText(rule)}.`;
  return [
    {
      cause: 'not-go-runs-on',
      sentence: beyond ? `NOT GO ran on ${turnsText(turns)}.${allowed}` : `NOT GO runs on too far.${allowed}`,
    },
  ];
}

function contactFaults({ coneContact }: EndsSeen): EndFault[] {
  if (coneContact === 'large-end')
    return [
      {
        cause: 'cone-angle',
        sentence:
          'Blue at the large end: the angle is wrong. Look at the blade and at the last ends cut with it.',
      },
    ];
  if (coneContact === 'broken')
    return [{ cause: 'cone-angle', sentence: 'The blue ring is broken: the cone does not touch all round.' }];
  return [];
}

function exposedFaults(exposedThreads: number | null, { min, max }: ExposedThreads): EndFault[] {
  if (exposedThreads === null || (exposedThreads >= min && exposedThreads <= max)) return [];
  const asked = min === max ? String(min) : `${min} to ${max}`;
  return [
    {
      cause: 'length',
      sentence: `${exposedThreads} exposed threads between collar and cone; ${asked} asked for.`,
    },
  ];
}

function finishFaults({ finish, operations }: EndsSeen): EndFault[] {
  if (finish === 'smooth') return [];
  const cause = operations.includes('cone') ? 'cone-finish' : 'torn-thread';
  return [{ cause, sentence: 'A mark can be felt on the surface: refused.' }];
}

function otherFaults({ otherFault }: EndsSeen): EndFault[] {
  if (otherFault === null) return [];
  const label = REJECT_CAUSES.find(({ code }) => code === otherFault)?.label ?? otherFault;
  return [{ cause: otherFault, sentence: `Refused: ${label}.` }];
}
