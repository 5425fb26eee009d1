import { addDays, type Day } from '../calendar/day';
import type { EdgeKind } from '../shop/vocabulary';
import type { EdgeOutlook } from './edge-walk';
import { endsAtConfidence, lesserEnds, shareAtLeast } from './ends-left';

/** Whether the edges last for a line: both in the same future. */
export interface LifeOutlook {
  readonly pMade: number;
  readonly safeEnds: number;
  readonly likelyEnds: number;
  readonly shorterEdge: EdgeKind;
  /** Edges that fall short, each with its own figures. Empty when the required probability is met. */
  readonly short: readonly ShortEdge[];
  /** First known day from which waiting for late pieces would meet the required probability. */
  readonly enoughFromDay: Day | null;
}

export interface ShortEdge {
  readonly kind: EdgeKind;
  readonly pMade: number;
  readonly safeEnds: number;
  readonly likelyEnds: number;
}

/**
 * Counts over the draws: P(line made) is the share of draws in which blade and die both last, in the same draw, for
 * every end. When each alone would do but both together do not, the weaker is named as short.
 * Undefined for a line that wears no edge.
 */
export function lifeOutlook(
  edges: readonly EdgeOutlook[],
  endsToMake: number,
  requiredProbability: number,
  today: Day,
): LifeOutlook | undefined {
  const [first, second] = edges;
  if (first === undefined) return undefined;
  const shares = edges.map((edge) => ({ edge, share: shareAtLeast(edge.ends, endsToMake) }));
  const weakest = shares.reduce((a, b) => (isShorter(b, a) ? b : a));
  const joint = second === undefined ? first.ends : lesserEnds(first.ends, second.ends);
  const [safeEnds = 0, likelyEnds = 0] = endsAtConfidence(joint, [requiredProbability, 0.5]);
  const pMade = shareAtLeast(joint, endsToMake);
  const below = shares.filter(({ share }) => share < requiredProbability);
  const named = pMade >= requiredProbability ? [] : below.length > 0 ? below : [weakest];
  const short = named.map(({ edge, share }) => shortEdge(edge, share, requiredProbability));
  const enoughFromDay =
    short.length > 0 ? firstEnoughDay(edges, endsToMake, requiredProbability, today) : null;
  return { pMade, safeEnds, likelyEnds, shorterEdge: weakest.edge.kind, short, enoughFromDay };
}

interface EdgeShare {
  readonly edge: EdgeOutlook;
  readonly share: number;
}

function shortEdge({ kind, ends }: EdgeOutlook, pMade: number, required: number): ShortEdge {
  const [safeEnds = 0, likelyEnds = 0] = endsAtConfidence(ends, [required, 0.5]);
  return { kind, pMade, safeEnds, likelyEnds };
}

/** Less likely to last; of two alike, the one with fewer ends in the mean. */
function isShorter(a: EdgeShare, b: EdgeShare): boolean {
  return a.share === b.share ? meanEnds(a.edge) < meanEnds(b.edge) : a.share < b.share;
}

function meanEnds({ ends }: EdgeOutlook): number {
  let sum = 0;
  for (const count of ends) sum += count;
  return sum / ends.length;
}

/** The first day on which a late piece comes that makes the required share whole. More supply never lowers it: halving. */
function firstEnoughDay(
  edges: readonly EdgeOutlook[],
  wanted: number,
  required: number,
  today: Day,
): Day | null {
  const days = [...new Set(edges.flatMap(({ waiting }) => waiting?.inDays ?? []))].sort((a, b) => a - b);
  const isEnough = (inDays: number): boolean => {
    const [first, second] = edges.map(({ ends, waiting }) => waiting?.endsBy(inDays) ?? ends);
    if (first === undefined) return false;
    return shareAtLeast(second === undefined ? first : lesserEnds(first, second), wanted) >= required;
  };
  let [low, high] = [0, days.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (isEnough(days[middle] as number)) high = middle;
    else low = middle + 1;
  }
  const inDays = days[low];
  return inDays === undefined ? null : addDays(today, Math.max(0, inDays));
}
