import type { LifeFit } from '@/lib/life/life-fit';
import type { KindWear } from '@/lib/outlook/kind-wear';
import type { PartWear } from '@/lib/outlook/part-wear';
import type { EdgeKind } from '@/lib/shop/vocabulary';
import { count, factorText, whole } from '../format';

export const KIND_NOUN: Record<EdgeKind, readonly [one: string, many: string]> = {
  die: ['die', 'dies'],
  blade: ['blade edge', 'blade edges'],
};

/** How edges of a kind end, from the shape of their lives. */
export function shapeWords({
  shape,
  probabilityWearsOut,
}: Pick<KindWear, 'shape' | 'probabilityWearsOut'>): string {
  if (probabilityWearsOut < 0.1)
    return 'Most go early and the rest last: look at the first ends, not at the age';
  if (probabilityWearsOut < 0.9) return 'Not clear yet whether they wear out or break by chance';
  if (shape.low >= 2.5) return 'They wear out, and most of them at about the same age';
  return 'They wear out rather than break by chance';
}

/** Whether a few last far longer than the rest: "3 chances in 10; 2.5 in 10 before the log spoke". */
export function longTailWords({ longTail }: Pick<KindWear, 'longTail'>): string {
  const inTen = (share: number): string => (10 * share).toFixed(1).replace(/\.0$/, '');
  return `${inTen(longTail.probability)} chances in 10; ${inTen(longTail.believed)} in 10 before the log spoke`;
}

type Seen = Pick<KindWear, 'kind' | 'seen' | 'counts' | 'regrind' | 'dry' | 'rework' | 'livesPerIncident'>;

/** What a regrind leaves: "0.87 of the life before (0.82 to 0.92), from 41 reground edges". */
export function regrindWords({ regrind, seen }: Pick<Seen, 'regrind' | 'seen'>): string {
  const from =
    seen.regroundEdges === 0
      ? 'no reground edge in the log yet: as believed before'
      : `from ${count(seen.regroundEdges, 'reground edge')}`;
  return `${factorText(regrind.median)} of the life before (${factorText(regrind.low)} to ${factorText(regrind.high)}), ${from}`;
}

/** How much faster it wears: "1.5 times as fast (0.90 to 2.5), nothing cut dry in the log yet". */
export function fasterWords(
  { low, median, high }: KindWear['dry'],
  { ends, how }: { ends: number; how: string },
): string {
  const from =
    ends === 0 ? `nothing ${how} in the log yet: as believed before` : `from ${count(ends, 'end')} ${how}`;
  return `${factorText(median)} times as fast (${factorText(low)} to ${factorText(high)}), ${from}`;
}

/** Accidents against lives: "3 lost to accidents; about one in 13 lives, between one in 7 and one in 31". */
export function incidentWords({
  kind,
  counts,
  livesPerIncident,
}: Pick<Seen, 'kind' | 'counts' | 'livesPerIncident'>) {
  const { low, median, high } = livesPerIncident;
  if (counts.incident === 0)
    return `None lost to an accident in the log; rarer than one in ${lives(low)} lives, nine times in ten`;
  const [one, many] = KIND_NOUN[kind];
  return `${count(counts.incident, one, many)} lost to accidents; about one in ${lives(median)} lives, between one in ${lives(low)} and one in ${lives(high)}`;
}

/** Never finer than the log can know: beyond a hundred in tens, beyond a thousand "1000". */
function lives(n: number): string {
  if (n >= 1000) return whole(1000);
  return whole(n >= 100 ? Math.round(n / 10) * 10 : Math.max(1, Math.round(n)));
}

/** How the log stands to the first guess; nothing where they agree within what is known, or no edge has worn out. */
export function againstGuess({
  guess,
  typicalEnds,
  counts,
}: Pick<PartWear, 'guess' | 'typicalEnds' | 'counts'>): string {
  if (guess === undefined || counts.worn === 0) return '';
  if (guess.ends > typicalEnds.high) return 'shorter than first guessed';
  return guess.ends < typicalEnds.low ? 'longer than first guessed' : '';
}

/** What happened to the edges of a kind, in one sentence for the head of a page. */
export function countsSentence(fit: Pick<LifeFit, 'kind' | 'counts'>): string {
  const { worn, incident, removedWorking, inService } = fit.counts;
  const [one, many] = KIND_NOUN[fit.kind];
  const parts = [
    `${count(worn, one, many)} worn out`,
    incident === 0 ? '' : `${whole(incident)} lost to accidents`,
    removedWorking === 0 ? '' : `${whole(removedWorking)} taken out good`,
    `${whole(inService)} still cutting`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}
