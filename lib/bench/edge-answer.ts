import { type DieVerdict, dieVerdict } from '../outlook/die-verdict';
import { finishChance, surelyMore } from './finish-chance';

/** What was counted on an edge since its figures were worked out: pressed, waiting to be sent, or sent. */
export interface CountedEnds {
  readonly ends: number;
  readonly goodEnds: number;
}

/** What the bench says of an edge for the work in hand. */
export interface EdgeAnswer {
  /** Ends that the line still asks of it. */
  readonly endsToCut: number;
  /** Ends that it has cut since the figures were worked out. */
  readonly cutSince: number;
  /** Most further ends with the chance that the shop wants, and with even chances; null where nothing honest can be said. */
  readonly safeEnds: number | null;
  readonly likelyEnds: number | null;
  /** Chance that it cuts all that the line still asks of it. */
  readonly chance: number | null;
  readonly verdict: DieVerdict | null;
}

/**
 * The answer for one edge at the bench, without the server: its futures as they were drawn, what was counted on it since, and
 * what the line still asks. Good ends come off what is asked; every end comes off what it has left.
 */
export function edgeAnswer(
  edge: { readonly left: readonly number[]; readonly endsToCut: number },
  counted: readonly CountedEnds[],
  requiredProbability: number,
): EdgeAnswer {
  const cutSince = counted.reduce((sum, { ends }) => sum + ends, 0);
  const good = counted.reduce((sum, { goodEnds }) => sum + goodEnds, 0);
  const endsToCut = Math.max(0, edge.endsToCut - good);
  const unknown = { endsToCut, cutSince, safeEnds: null, likelyEnds: null, chance: null, verdict: null };
  if (edge.left.length === 0) return unknown;
  const chance = finishChance(edge.left, cutSince, endsToCut);
  if (chance === null) return unknown;
  return {
    ...{ endsToCut, cutSince, chance },
    safeEnds: surelyMore(edge.left, cutSince, requiredProbability),
    likelyEnds: surelyMore(edge.left, cutSince, 0.5),
    verdict: dieVerdict({ probability: chance, required: requiredProbability }),
  };
}
