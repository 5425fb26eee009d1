import { chanceWords, count, floorEnds } from '@/app/_shared/format';
import type { LineVerdict } from '@/lib/capability/line-verdict';

type Lives = Pick<LineVerdict, 'pMade' | 'safeEnds' | 'likelyEnds' | 'blockers'>;

/** Whether the figures about lives mean anything: the line cuts, and the edges that it needs are there. */
function livesKnown({ safeEnds, blockers }: Lives): boolean {
  return (
    safeEnds !== null &&
    !blockers.some(({ hard, role }) => hard && (role === null || role === 'die' || role === 'blade'))
  );
}

/** "about 7 in 10 that the edges last"; empty where there is nothing to say. */
export function chanceSentence(lives: Lives): string {
  return livesKnown(lives) ? `${chanceWords(lives.pMade)} that the edges last` : '';
}

/** "37 ends safe, 83 likely"; empty where there is nothing to say. */
export function endsSentence(lives: Lives): string {
  if (!livesKnown(lives) || lives.safeEnds === null || lives.likelyEnds === null) return '';
  const safe = floorEnds(lives.safeEnds);
  return `${safe === 0 ? 'no ends' : count(safe, 'end')} safe, ${floorEnds(lives.likelyEnds)} likely`;
}

/** The same where no blocker gives the figures of the edge that is short: one figure, not two that nearly agree. */
export function endsUnlessShort(lives: Lives): string {
  return lives.blockers.some(({ kind }) => kind === 'life-short') ? '' : endsSentence(lives);
}
