import { type Day, weekStartDay } from '../calendar';
import type { Ensemble } from '../ensemble/build-ensemble';
import { exposurePerEnd, ownConnection } from '../outlook/part-wear';
import type { ShopFacts } from '../outlook/shop-facts';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import type { PlayedPlan } from './objective';
import { proposalOf, type ToolProposal } from './propose-tools';
import { shopIssues } from './shop-issues';
import { heldTools } from './shop-tasks';
import type { IssueWeek } from './week-plan';

/** What planning the issues of a week came to, against each line taking the fullest tool as it comes. */
export interface IssueGain {
  readonly kind: EdgeKind;
  readonly lines: number;
  /** Lines that one tool lasts for with the probability asked. */
  readonly lasting: number;
  readonly lastingFirstCome: number;
  /** Ends that are expected to be cut without a change in the middle of a line. */
  readonly ends: number;
  readonly endsFirstCome: number;
  /** Parts whose longest job left to one edge differs: in safe ends of the part’s own connection after the week’s lines. */
  readonly longest: readonly {
    readonly partId: string;
    readonly ends: number;
    readonly endsFirstCome: number;
  }[];
}

/** The crib's list of one week: lines in the order in which they begin, each with a tool of every kind that it needs. */
export interface WeekList {
  readonly fromDay: Day;
  readonly lines: readonly { readonly lineId: string; readonly proposals: readonly ToolProposal[] }[];
  readonly gains: readonly IssueGain[];
}

/** The Mondays of the weeks in which lines of the plan begin. The present week is always among them. */
export function issueWeeks(facts: ShopFacts, ensemble: Ensemble): Day[] {
  const issues = shopIssues(facts, ensemble);
  const days = EDGE_KINDS.flatMap((kind) => issues[kind].map(({ fromDay }) => fromDay));
  return [...new Set([weekStartDay(facts.today), ...days])].sort();
}

/** The list of the week that a Monday begins. Lines already running count where they begin now: today. */
export function weekList(facts: ShopFacts, ensemble: Ensemble, fromDay: Day): WeekList {
  const issues = shopIssues(facts, ensemble);
  const byLine = new Map<string, ToolProposal[]>();
  const gains: IssueGain[] = [];
  for (const kind of EDGE_KINDS) {
    const week = issues[kind].find((known) => known.fromDay === fromDay);
    if (week === undefined) continue;
    const held = heldTools(facts, kind);
    for (const line of week.lines) {
      const mine = byLine.get(line.task.lineId) ?? [];
      byLine.set(line.task.lineId, mine);
      mine.push(proposalOf(line, issues[kind], held));
    }
    gains.push({
      kind,
      lines: week.lines.length,
      ...countOf(week.played, week.lines),
      ...firstComeOf(week.firstCome, week.lines),
      longest: longestAfter(facts, kind, week),
    });
  }
  const order = new Map(
    facts.lines.map(({ id, startOnDay, dueOnDay }) => [id, `${startOnDay} ${dueOnDay} ${id}`]),
  );
  const lines = [...byLine]
    .map(([lineId, proposals]) => ({ lineId, proposals }))
    .sort((a, b) => ((order.get(a.lineId) ?? '') < (order.get(b.lineId) ?? '') ? -1 : 1));
  return { fromDay, lines, gains };
}

type Lines = readonly { readonly task: { readonly lineId: string; readonly required: number } }[];

function countOf({ work }: PlayedPlan, lines: Lines): { lasting: number; ends: number } {
  let [lasting, ends] = [0, 0];
  for (const { task } of lines) {
    const done = work.get(task.lineId);
    if (done !== undefined && done.probability >= task.required - 1e-12) lasting += 1;
    ends += done?.madeEnds ?? 0;
  }
  return { lasting, ends };
}

function firstComeOf(played: PlayedPlan, lines: Lines): { lastingFirstCome: number; endsFirstCome: number } {
  const { lasting, ends } = countOf(played, lines);
  return { lastingFirstCome: lasting, endsFirstCome: ends };
}

/** By part that the week cuts with: the ends that its fullest edge could still do safely, nine futures in ten. */
function longestAfter(
  facts: ShopFacts,
  kind: EdgeKind,
  { lines, played, firstCome }: IssueWeek,
): IssueGain['longest'] {
  const [first] = lines;
  if (first === undefined) return [];
  const used = new Set([...played.left.keys(), ...firstCome.left.keys()]);
  const partOf = new Map(facts.tools.map(({ id, partId }) => [id, partId]));
  const partIds = [...new Set([...used].flatMap((id) => partOf.get(id) ?? []))].sort();
  return partIds.flatMap((partId) => {
    const part = facts.parts.find(({ id }) => id === partId);
    const connection = part && ownConnection(facts, part);
    if (connection === undefined) return [];
    const perEnd = exposurePerEnd(kind, connection);
    const tools = [...first.lives].filter(([id]) => partOf.get(id) === partId);
    const longest = (left: ReadonlyMap<string, Float64Array>) =>
      Math.max(...tools.map(([id, life]) => safeEndsOf(left.get(id) ?? life, perEnd)));
    const [ends, endsFirstCome] = [longest(played.left), longest(firstCome.left)];
    return ends === endsFirstCome ? [] : [{ partId, ends, endsFirstCome }];
  });
}

function safeEndsOf(life: Float64Array, perEnd: number): number {
  const sorted = Float64Array.from(life).sort();
  return Math.floor((sorted[sorted.length - Math.ceil(0.9 * sorted.length - 1e-9)] as number) / perEnd);
}
