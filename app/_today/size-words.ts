import type { Blocker } from '@/lib/capability/blocker';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import { verdictHeadline } from '@/lib/capability/verdict-headline';

/** How many reasons fit under a drawing. */
const SHOWN = 2;

/** The most limiting reasons of a size that cannot be made: "no die, no GO ring and 3 more". */
export function shortReasons({ verdict, blockers }: Pick<LineVerdict, 'verdict' | 'blockers'>): string {
  const headline = verdictHeadline('', { verdict, blockers: blockers.slice(0, SHOWN) });
  const more = blockers.length - SHOWN;
  const named = headline.slice(headline.indexOf(':') + 1).trim();
  return more > 0 ? `${named} and ${more} more` : named;
}

/** True when nothing is wrong but that the pieces are out with lines of the plan: each role has one that is. */
export function isOutOnWork(blockers: readonly Blocker[]): boolean {
  const out = new Set(
    blockers.flatMap((blocker) =>
      blocker.kind === 'held-elsewhere' && blocker.lineId !== null ? [blocker.role] : [],
    ),
  );
  return out.size > 0 && blockers.every(({ role }) => out.has(role));
}
