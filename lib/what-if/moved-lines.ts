import type { LineVerdict } from '../capability/line-verdict';
import type { SizeStatus } from '../capability/size-status';

/** One line before and after a change. Before is undefined for a line that the change brings in, after for one it drops. */
export interface LineMove {
  readonly lineId: string;
  readonly before: LineVerdict | undefined;
  readonly after: LineVerdict | undefined;
}

/** The lines of two plans side by side: those whose answer moves, those whose chance moves, and how many stay as they are. */
export interface MovedLines {
  readonly answers: readonly LineMove[];
  readonly chances: readonly LineMove[];
  readonly unmoved: number;
}

/**
 * Which lines a change moves. An answer moves when the verdict, what is in the way, or the day on which it clears moves;
 * a chance when only the share of futures does. In queue order of the plan after, dropped lines last.
 */
export function movedLines(before: readonly LineVerdict[], after: readonly LineVerdict[]): MovedLines {
  const was = new Map(before.map((verdict) => [verdict.lineId, verdict]));
  const is = new Map(after.map((verdict) => [verdict.lineId, verdict]));
  const gone = before.filter(({ lineId }) => !is.has(lineId));
  const moves = [...after, ...gone].map(
    ({ lineId }): LineMove => ({ lineId, before: was.get(lineId), after: is.get(lineId) }),
  );
  const answers = moves.filter(isAnswerMoved);
  const chances = moves.filter((move) => !answers.includes(move) && move.before?.pMade !== move.after?.pMade);
  return { answers, chances, unmoved: moves.length - answers.length - chances.length };
}

function isAnswerMoved({ before, after }: LineMove): boolean {
  if (before === undefined || after === undefined) return true;
  return (
    before.verdict !== after.verdict ||
    before.clearsOnDay !== after.clearsOnDay ||
    blockerKey(before) !== blockerKey(after)
  );
}

function blockerKey({ blockers }: LineVerdict): string {
  return blockers.map(({ kind, role }) => `${kind} ${role}`).join();
}

/** Sizes whose verdict or ends in hand a change moves, in the order of the list. */
export function movedSizes(
  before: readonly SizeStatus[],
  after: readonly SizeStatus[],
): { readonly connectionId: string; readonly before: SizeStatus; readonly after: SizeStatus }[] {
  const was = new Map(before.map((status) => [status.connectionId, status]));
  return after.flatMap((status) => {
    const known = was.get(status.connectionId);
    const moved =
      known !== undefined && (known.verdict !== status.verdict || known.likelyEnds !== status.likelyEnds);
    return known !== undefined && moved
      ? [{ connectionId: status.connectionId, before: known, after: status }]
      : [];
  });
}
