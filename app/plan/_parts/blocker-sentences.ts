import { listWords } from '@/app/_shared/format';
import { dayLabel } from '@/lib/calendar';
import type { Blocker } from '@/lib/capability/blocker';
import { isByShare, wordBlocker } from '@/lib/capability/word-blocker';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';

/** From this many on, things that are missing alike share one sentence. */
const TOGETHER = 3;

/**
 * The blockers of a line as sentences, most limiting first, every one named. Several things missing with the same date
 * (or none), or out with the same line, are named in one sentence, so that a size the shop has nothing for can be read at a glance.
 */
export function blockerSentences(
  blockers: readonly Blocker[],
  lineLabel: (lineId: string) => string,
): string[] {
  const sentences: string[] = [];
  for (let at = 0; at < blockers.length; ) {
    const run = runAlike(blockers.slice(at));
    const [first] = run;
    if (first === undefined) break;
    if (run.length >= TOGETHER) sentences.push(sharedSentence(run, first, lineLabel));
    else sentences.push(...run.map((blocker) => wordBlocker(blocker, { lineLabel })));
    at += run.length;
  }
  return sentences;
}

/** The first blocker, with those after it that are missing likewise, or out with the same line, and clear on the same day. */
function runAlike(blockers: readonly Blocker[]): readonly Blocker[] {
  const [first] = blockers;
  if (first === undefined || (first.kind !== 'missing' && first.kind !== 'held-elsewhere'))
    return blockers.slice(0, 1);
  const end = blockers.findIndex((blocker) => !isAlike(blocker, first));
  return end === -1 ? blockers : blockers.slice(0, end);
}

function isAlike(a: Blocker, b: Blocker): boolean {
  if (a.clearsOnDay !== b.clearsOnDay) return false;
  if (a.kind === 'held-elsewhere' && b.kind === a.kind)
    return a.lineId === b.lineId && a.untilDay === b.untilDay;
  return a.kind === 'missing' && b.kind === a.kind;
}

function sharedSentence(
  run: readonly Blocker[],
  first: Blocker,
  lineLabel: (lineId: string) => string,
): string {
  const names = run.flatMap(({ role }) => (role === null ? [] : [ROLE_LABEL[role]]));
  const by = isByShare(first) ? 'sure enough by' : 'clears';
  const clears = first.clearsOnDay === null ? 'no date known' : `${by} ${dayLabel(first.clearsOnDay)}`;
  if (first.kind !== 'held-elsewhere') return `No ${listWords(names, 'or')} for this size; ${clears}.`;
  const holder = first.lineId === null ? 'out on loan' : `with ${lineLabel(first.lineId)}`;
  const until = first.untilDay === null ? '' : ` until ${dayLabel(first.untilDay)}`;
  return `${capital(listWords(names))} are ${holder}${until}; ${clears}.`;
}
