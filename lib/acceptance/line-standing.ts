import type { Role } from '../shop/vocabulary';

/** One look at ends of a line, as far as the sum of the line asks for it. */
export interface LookFacts {
  readonly id: string;
  readonly endCount: number;
  readonly decision: 'accepted' | 'refused';
  readonly gaugesMissing: readonly Role[];
  /** The earlier look whose ends these are, gauged again. */
  readonly regaugesId: string | null;
}

/** What recalls have to say about one look. */
export interface SuspectFacts {
  readonly acceptanceId: string;
  readonly recallId: string;
  readonly openEnds: number;
  readonly goneEnds: number;
}

/** Accepted ends that cannot be released as they are, and why. */
export interface HeldEnds {
  readonly acceptanceId: string;
  readonly ends: number;
  readonly why: 'no-gauge' | 'suspect';
  readonly gaugesMissing: readonly Role[];
  readonly recallIds: readonly string[];
}

export interface LineStanding {
  /** Ends accepted and still counted. */
  readonly acceptedEnds: number;
  /** Those of them with every gauge recorded and no recall open on them. */
  readonly releasableEnds: number;
  /** Ends refused when first looked at. */
  readonly refusedEnds: number;
  readonly held: readonly HeldEnds[];
}

/**
 * Adds up what was looked at on one line. An end counts once, however often it is gauged again: a second look adds the
 * gauges that the first one lacked, or refuses ends that the first one took. Ends that a recall scrapped or had made
 * again count no more; those it has not yet decided about are held. Whole ends; releasable ≤ accepted ≤ looked at.
 */
export function lineStanding(looks: readonly LookFacts[], suspects: readonly SuspectFacts[]): LineStanding {
  const firsts = looks.filter(({ regaugesId }) => regaugesId === null);
  const accepted = firsts.filter(({ decision }) => decision === 'accepted');
  const sums = accepted.map((look) => sumOfLook(look, looks, suspects));
  const total = (pick: (sum: LookSum) => number) => sums.reduce((sum, one) => sum + pick(one), 0);
  return {
    acceptedEnds: total((one) => one.accepted),
    releasableEnds: total((one) => one.releasable),
    refusedEnds: firsts
      .filter(({ decision }) => decision === 'refused')
      .reduce((sum, { endCount }) => sum + endCount, 0),
    held: sums.flatMap(({ held }) => held),
  };
}

interface LookSum {
  readonly accepted: number;
  readonly releasable: number;
  readonly held: readonly HeldEnds[];
}

function sumOfLook(look: LookFacts, looks: readonly LookFacts[], suspects: readonly SuspectFacts[]): LookSum {
  const again = looks.filter(({ regaugesId }) => regaugesId === look.id);
  const ofThese = suspects.filter(({ acceptanceId }) => acceptanceId === look.id);
  const refusedAgain = sumEnds(again.filter(({ decision }) => decision === 'refused'));
  const gone = Math.min(look.endCount, refusedAgain + sumOf(ofThese, 'goneEnds'));
  const accepted = look.endCount - gone;
  const gaugedAgain = again
    .filter((one) => one.decision === 'accepted' && one.gaugesMissing.length === 0)
    .reduce((sum, one) => sum + one.endCount - openOf(suspects, one), 0);
  const shown = look.gaugesMissing.length === 0 ? accepted : Math.min(accepted, gaugedAgain);
  const open = Math.min(shown, openOf(suspects, look));
  const held = [
    heldEnds(look, accepted - shown, 'no-gauge', []),
    heldEnds(
      look,
      open,
      'suspect',
      ofThese.filter(({ openEnds }) => openEnds > 0).map(({ recallId }) => recallId),
    ),
  ];
  return { accepted, releasable: shown - open, held: held.filter(({ ends }) => ends > 0) };
}

function heldEnds(
  { id, gaugesMissing }: LookFacts,
  ends: number,
  why: HeldEnds['why'],
  recallIds: readonly string[],
): HeldEnds {
  return { acceptanceId: id, ends, why, gaugesMissing: why === 'no-gauge' ? gaugesMissing : [], recallIds };
}

function openOf(suspects: readonly SuspectFacts[], look: LookFacts): number {
  return Math.min(
    look.endCount,
    sumOf(
      suspects.filter(({ acceptanceId }) => acceptanceId === look.id),
      'openEnds',
    ),
  );
}

function sumOf(suspects: readonly SuspectFacts[], field: 'openEnds' | 'goneEnds'): number {
  return suspects.reduce((sum, suspect) => sum + suspect[field], 0);
}

function sumEnds(looks: readonly LookFacts[]): number {
  return looks.reduce((sum, { endCount }) => sum + endCount, 0);
}
