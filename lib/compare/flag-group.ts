import { kindDrawsOf } from '../ensemble/kind-draws';
import { fitLife, type LifeFitInput } from '../life/fit-life';
import type { LifeFit } from '../life/life-fit';
import type { FlagVerdict, GroupEffect, GroupedBy, GroupFlag, LogRank } from './comparison';
import { exposureAtMode } from './exposure-at-mode';
import { groupEffect } from './group-effect';
import type { GroupedEdge } from './grouped-edge';
import { logRank } from './log-rank';

/** Below these counts no group is flagged, whatever the figures say. Common practice, no source. */
export const FLAG_MINIMUM = { edges: 3, worn: 2, ends: 20 } as const;
/** How sure one must be that a group's life is lower before it is flagged: many groups are looked at. Stated default. */
export const FLAG_PROBABILITY = 0.95;

const DRAWS = 512;

export interface FlagInput {
  readonly groupedBy: GroupedBy;
  readonly groupId: string;
  readonly edges: readonly GroupedEdge[];
  /** What the life fit is made from, with the edges of all groups; those of this group are taken out for the comparison. */
  readonly fit: LifeFitInput;
}

/**
 * Does a group of edges (a lot, a supplier, a heat, a lot of fluid) die early? Its effect against the rest, the log-rank test
 * against the rest where edges belong to it whole, and a verdict that never flags below the stated counts.
 * Undefined when the rest cannot be fitted, or the group has no edge.
 */
export function flagGroup({ groupedBy, groupId, edges, fit: input }: FlagInput): GroupFlag | undefined {
  const mine = new Set(edges.map(({ history }) => `${history.edgeNo}:${history.toolId}`));
  const rest = input.histories.filter(({ edgeNo, toolId }) => !mine.has(`${edgeNo}:${toolId}`));
  const fit = fitLife({ ...input, histories: rest });
  if (!fit.ok || edges.length === 0) return undefined;
  const effect = groupEffect(kindDrawsOf(fit, DRAWS), { groupId, edges });
  const whole = edges.every(({ within }) => within === undefined);
  const of = rest.filter(({ kind }) => kind === input.kind);
  const test = whole && of.length > 0 ? againstRest(fit, groupId, edges, of) : undefined;
  return { groupedBy, verdict: verdictOn(effect), effect, logRank: test };
}

function verdictOn({ edges, worn, ends, probabilityLower }: GroupEffect): FlagVerdict {
  if (edges < FLAG_MINIMUM.edges) return 'too-few-edges';
  if (ends < FLAG_MINIMUM.ends) return 'too-few-ends';
  if (worn < FLAG_MINIMUM.worn) return 'too-few-worn';
  return probabilityLower >= FLAG_PROBABILITY ? 'flagged' : 'no-difference';
}

function againstRest(
  fit: LifeFit,
  groupId: string,
  edges: readonly GroupedEdge[],
  rest: LifeFitInput['histories'],
): LogRank {
  // Parts last differently, and so do first edges and reground ones: each is held only against its like.
  const life = ({ before, during, end, partId, regrinds, entered }: LifeFitInput['histories'][number]) => ({
    age: exposureAtMode(fit, [...before, ...during]),
    worn: end === 'worn',
    enteredAt: entered && exposureAtMode(fit, entered),
    stratum: `${partId} ${regrinds}`,
  });
  return logRank([
    { groupId, lives: edges.map(({ history }) => life(history)) },
    { groupId: 'rest', lives: rest.map(life) },
  ]);
}
