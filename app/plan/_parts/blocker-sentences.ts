import { listWords } from '@/app/_shared/format';
import { dayLabel } from '@/lib/calendar';
import type { Blocker } from '@/lib/capability/line-verdict';
import { wordBlocker } from '@/lib/capability/word-blocker';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

/** From this many on, things that are missing alike share one sentence. */
const TOGETHER = 3;

/**
 * The blockers of a line as sentences, most limiting first, every one named. Several things missing with the same date
 * (or none) are named in one sentence, so that a size the shop has nothing for can be read at a glance.
 */
export function blockerSentences(
  blockers: readonly Blocker[],
  lineLabel: (lineId: string) => string,
): string[] {
  const sentences: string[] = [];
  for (let at = 0; at < blockers.length; ) {
    const run = missingAlike(blockers.slice(at));
    const [first] = run;
    if (first === undefined) break;
    if (run.length >= TOGETHER) sentences.push(missingSentence(run, first.clearsOnDay));
    else sentences.push(...run.map((blocker) => wordBlocker(blocker, { lineLabel })));
    at += run.length;
  }
  return sentences;
}

/** The first blocker, with those after it that are missing likewise and clear on the same day. */
function missingAlike(blockers: readonly Blocker[]): readonly Blocker[] {
  const [first] = blockers;
  if (first?.kind !== 'missing') return blockers.slice(0, 1);
  const end = blockers.findIndex(
    ({ kind, clearsOnDay }) => kind !== 'missing' || clearsOnDay !== first.clearsOnDay,
  );
  return end === -1 ? blockers : blockers.slice(0, end);
}

function missingSentence(run: readonly Blocker[], clearsOnDay: string | null): string {
  const names = run.flatMap(({ role }) => (role === null ? [] : [ROLE_LABEL[role]]));
  const clears = clearsOnDay === null ? 'no date known' : `clears ${dayLabel(clearsOnDay)}`;
  return `No ${listWords(names, 'or')} for this size; ${clears}.`;
}
