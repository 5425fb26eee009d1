import { count, dayText, inDays, listWords } from '@/app/_shared/format';
import type { ComingPiece } from '@/lib/capability/coming-pieces';
import type { NeedPhase, SetNeed } from '@/lib/capability/complete-set';
import type { NeedCheck } from '@/lib/capability/set-checklist';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { capital } from '@/lib/text/capital';

/** How many pieces are named before they are counted. */
const NAMED = 3;

type LineLabel = (lineId: string) => string;

/** From which day a piece can be used, and what must happen first: "back Sun 29 Nov from calibration, must pass first". */
export function comingWords(
  { fromDay, where, lineId }: ComingPiece,
  today: string,
  lineLabel: LineLabel,
): string {
  const day = dayText(fromDay, today);
  if (where === 'on-order') return `on order, sure enough by ${day}`;
  if (where === 'calibration') return `back ${day} from calibration, must pass first`;
  if (where === 'regrind') return `back ${day} from regrind, its first-off must pass first`;
  if (where === 'in-crib')
    return `from ${day}; kept for ${lineId === null ? 'other work' : lineLabel(lineId)} before`;
  return lineId === null ? `back ${day} from loan` : `from ${day}; with ${lineLabel(lineId)} before`;
}

/** The piece that each need rests on, where that is not here today: the soonest. */
function rests(checks: readonly NeedCheck[]): { need: SetNeed; piece: ComingPiece }[] {
  return checks.flatMap(({ state, need, coming: [piece] }) =>
    state === 'coming' && piece !== undefined ? [{ need, piece }] : [],
  );
}

/** Things that come alike share one phrase: "A and B: from Tue 1 Dec; with job J-086 before". */
function alike(named: readonly (readonly [name: string, words: string])[]): string[] {
  const names = new Map<string, string[]>();
  for (const [name, words] of named) names.set(words, [...(names.get(words) ?? []), name]);
  return [...names].map(([words, mine]) => `${listWords(mine)}: ${words}`);
}

/** What a line rests on that is not here today, as sentences: "GO ring G-25-GO-2: back Sun 29 Nov from …". */
export function restsOnSentences(
  checks: readonly NeedCheck[],
  today: string,
  lineLabel: LineLabel,
): string[] {
  const named = rests(checks).map(({ need, piece }) => {
    const what = `${ROLE_LABEL[need.role]}${piece.toolId === null ? '' : ` ${piece.toolId}`}`;
    return [what, comingWords(piece, today, lineLabel)] as const;
  });
  return alike(named).map((phrase) => `${capital(phrase)}.`);
}

/** What one phase rests on, by ID, or by what it is where it has none yet; empty where all of it is here. */
export function restsOnWords(
  checks: readonly NeedCheck[],
  phase: NeedPhase,
  today: string,
  lineLabel: LineLabel,
): string {
  const named = rests(checks.filter(({ need }) => need.phase === phase)).map(
    ({ need, piece }) =>
      [piece.toolId ?? ROLE_LABEL[need.role], comingWords(piece, today, lineLabel)] as const,
  );
  return named.length === 0 ? '' : `rests on ${alike(named).join('; ')}`;
}

/** The day from which all of it is here: "once G-25-GO-2 is here, in 4 days, Sun 29 Nov"; empty where all of it is. */
export function onceHereWords(checks: readonly NeedCheck[], today: string): string {
  const pieces = rests(checks);
  const last = pieces
    .map(({ piece }) => piece.fromDay)
    .sort()
    .at(-1);
  if (last === undefined) return '';
  const names = pieces.map(({ need, piece }) => piece.toolId ?? ROLE_LABEL[need.role]);
  const which = names.length > NAMED ? count(names.length, 'piece') : listWords(names);
  return `once ${which} ${names.length === 1 ? 'is' : 'are'} here, ${inDays(last, today)}`;
}
