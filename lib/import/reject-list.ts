import { ok, type Result, refuse } from '../result';
import type { RejectCause } from '../shop/vocabulary';
import { quoteCell } from './cell-value';
import { REJECT_WORDS, readWord } from './word-list';

/** Rejects of one row by cause. */
export type Rejects = readonly { readonly cause: RejectCause; readonly count: number }[];

/** Reads rejects by cause: "torn-thread: 1; length: 2", "2 torn thread", "chatter"; a cause alone counts one. */
export function readRejects(text: string): Result<Rejects> {
  const whole = readWord(REJECT_WORDS, text);
  if (whole !== undefined) return ok([{ cause: whole, count: 1 }]);
  const counts = new Map<RejectCause, number>();
  for (const token of text.split(/[;|,+]/)) {
    if (token.trim() === '') continue;
    const reject = readReject(token);
    if (reject === undefined) {
      return refuse(
        'rejects',
        `${quoteCell(token.trim())} is not a cause of rejects. Write them as torn-thread: 1; length: 2.`,
      );
    }
    counts.set(reject.cause, (counts.get(reject.cause) ?? 0) + reject.count);
  }
  return ok([...counts].map(([cause, count]) => ({ cause, count })));
}

/** The text that `readRejects` reads back as these rejects. */
export function rejectsText(rejects: Rejects): string {
  return rejects.map(({ cause, count }) => `${cause}: ${count}`).join('; ');
}

function readReject(token: string): { cause: RejectCause; count: number } | undefined {
  const before = /^\s*(\d{1,4})\s*[x×]?\s+(\D.*)$/.exec(token);
  const after = /^(.*?\D)[\s:=x×]+(\d{1,4})\s*$/.exec(token);
  const [word, figure] = before ? [before[2], before[1]] : after ? [after[1], after[2]] : [token, '1'];
  const cause = readWord(REJECT_WORDS, word ?? '');
  const count = Number(figure);
  return cause === undefined || count < 1 ? undefined : { cause, count };
}
