import type { Ensemble } from '../ensemble/build-ensemble';
import type { ShopFacts } from '../outlook/shop-facts';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import type { Chosen, PassedOver } from './choose-tool';
import { type EdgeTask, meanLife, overlaps, toolWork } from './edge-task';
import { type HandOver, handOverOf } from './hand-over';
import { shopIssues } from './shop-issues';
import { heldTools } from './shop-tasks';
import type { IssueLine, IssueWeek } from './week-plan';

/** One tool as it would stand in one line. */
export interface ToolInLine {
  readonly toolId: string;
  /** Share of the futures in which it cuts every end of the line. */
  readonly probability: number;
  /** Most whole ends with nine chances in ten, and with even chances. */
  readonly safeEnds: number;
  readonly likelyEnds: number;
}

/** What is proposed for one line and one kind of edge. */
export interface ToolProposal {
  readonly kind: EdgeKind;
  readonly lineId: string;
  /** Ends that it is for. */
  readonly ends: number;
  readonly required: number;
  /** Null: no tool that fits is free. */
  readonly chosen: (ToolInLine & { readonly why: Chosen }) | null;
  /** Cut with next, in this order, where the first may not last. */
  readonly next: readonly ToolInLine[];
  /** Chance that all of these together cut every end. */
  readonly probability: number;
  /** Mean number of changes in the middle of the line. */
  readonly changes: number;
  /** The others that fit and are here, the most worn first. */
  readonly runnersUp: readonly (ToolInLine & { readonly why: PassedOver })[];
  /** Where none is free: the tool that comes free first, when, and the line that hands it over (null: it comes back). */
  readonly handOver: HandOver | null;
}

/**
 * Which tools to issue for one line of the plan: for every kind of edge that it still needs the tool proposed with its reason,
 * what follows it where it may not last, and why the others stay. Solved with all lines that compete, week by week; lines
 * before it are taken to have cut theirs. Empty for a line that is closed, has no row in the tables or cuts nothing more.
 * For the kit at the crib, the week's list and the line's page.
 */
export function proposeTools(facts: ShopFacts, ensemble: Ensemble, lineId: string): ToolProposal[] {
  return EDGE_KINDS.flatMap((kind) => {
    const weeks = shopIssues(facts, ensemble)[kind];
    const week = weeks.find(({ lines }) => lines.some(({ task }) => task.lineId === lineId));
    const line = week?.lines.find(({ task }) => task.lineId === lineId);
    return line === undefined ? [] : [proposalOf(line, weeks, heldTools(facts, kind))];
  });
}

/** The proposal of one line out of the plan of issues of its kind. */
export function proposalOf(
  line: IssueLine,
  weeks: readonly IssueWeek[],
  held: ReadonlyMap<string, string>,
): ToolProposal {
  const { task, toolId, succession, life } = line;
  const others = task.spareIds.filter((id) => !succession.toolIds.includes(id));
  const runnersUp = others
    .flatMap((id) => {
      const has = line.lives.get(id);
      return has === undefined ? [] : [{ id, has }];
    })
    .sort((a, b) => meanLife(a.has) - meanLife(b.has))
    .map(({ id, has }) => {
      const inLine = toolInLine(id, has, task);
      return { ...inLine, why: passedOver(id, inLine, line, weeks) };
    });
  return {
    kind: task.kind,
    lineId: task.lineId,
    ends: task.ends,
    required: task.required,
    chosen:
      toolId === null || life === null
        ? null
        : { ...toolInLine(toolId, life, task), why: whyChosen(toolId, line, runnersUp, held) },
    next: succession.toolIds
      .filter((id) => id !== toolId)
      .map((id) => toolInLine(id, line.lives.get(id) ?? new Float64Array(task.perEnd.length), task)),
    probability: succession.probability,
    changes: succession.changes,
    runnersUp,
    handOver: toolId === null ? handOverOf(line, weeks) : null,
  };
}

function toolInLine(toolId: string, life: Float64Array, task: EdgeTask): ToolInLine {
  const ends = life.map((has, k) => Math.floor(has / (task.perEnd[k] as number))).sort();
  const atShare = (share: number): number =>
    ends[ends.length - Math.ceil(share * ends.length - 1e-9)] as number;
  const probability = toolWork(life, [task]).work[0]?.probability ?? 0;
  return { toolId, probability, safeEnds: atShare(0.9), likelyEnds: atShare(0.5) };
}

function whyChosen(
  toolId: string,
  { task, probability }: IssueLine,
  others: readonly ToolInLine[],
  held: ReadonlyMap<string, string>,
): Chosen {
  if (held.get(toolId) === task.lineId) return 'in-hand';
  if (probability < task.required - 1e-12) return 'fewest-at-risk';
  return others.some((other) => other.probability >= task.required - 1e-12)
    ? 'most-worn-that-lasts'
    : 'only-one-that-lasts';
}

/** Kept for a line that runs at the same time, else for the next line that it is proposed for, else told by its life. */
function passedOver(
  toolId: string,
  inLine: ToolInLine,
  { task }: IssueLine,
  weeks: readonly IssueWeek[],
): PassedOver {
  const users = weeks
    .flatMap(({ lines }) => lines)
    .filter((other) => other.task.lineId !== task.lineId && other.succession.toolIds.includes(toolId));
  const user = users.find((other) => overlaps(other.task, task)) ?? users.at(0);
  if (inLine.probability < task.required - 1e-12) return { kind: 'may-not-last' };
  return user === undefined ? { kind: 'fuller' } : { kind: 'kept-for', lineId: user.task.lineId };
}
