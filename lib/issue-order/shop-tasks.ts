import { listCandidates } from '../capability/candidates';
import { indexCandidates } from '../capability/fitting-candidates';
import { type QueuedLine, queueLines } from '../capability/line-order';
import { needStatuses } from '../capability/need-status';
import type { Ensemble } from '../ensemble/build-ensemble';
import {
  endsLeftFor,
  planConnections,
  planLines,
  requiredProbability,
  setItems,
} from '../outlook/plan-facts';
import type { LineFacts, ShopFacts } from '../outlook/shop-facts';
import type { EdgeKind } from '../shop/vocabulary';
import { compareTasks, type EdgeTask } from './edge-task';

const OPERATION = { blade: 'cone', die: 'thread' } as const;

/**
 * What the lines of the open jobs ask of one kind of edge, in the order in which they are served: with the tools that are
 * in the crib, or with the line already, and usable from its start through its due day. Lines whose size or material has
 * no row are left out. A line that has tools in hand keeps to them.
 */
export function shopTasks(facts: ShopFacts, ensemble: Ensemble, kind: EdgeKind): EdgeTask[] {
  const queue = queueLines(planLines(facts), planConnections(facts), facts.today);
  const lineDueOnDay = new Map(queue.map(({ line, dueOnDay }) => [line.lineId, dueOnDay]));
  const find = indexCandidates(listCandidates(setItems(facts), [], { today: facts.today, lineDueOnDay }));
  const lines = new Map(facts.lines.map((line) => [line.id, line]));
  const held = heldTools(facts, kind);
  return queue
    .flatMap((queued): EdgeTask[] => {
      const line = lines.get(queued.line.lineId);
      const status = needStatuses(queued, find).find(({ need }) => need.role === kind);
      const perEnd = line && exposureDraws(queued, kind, ensemble);
      if (line === undefined || status === undefined || perEnd === undefined) return [];
      const spareIds = status.usable.flatMap(({ toolId }) =>
        toolId === null || ensemble.residualLife(toolId) === undefined ? [] : [toolId],
      );
      const inHand = spareIds.filter((toolId) => held.get(toolId) === line.id);
      const toolIds = inHand.length > 0 ? inHand : spareIds;
      const freeFromDay = new Map(
        status.pieces.flatMap(({ candidate, standing }): [string, string][] =>
          candidate.toolId === null || standing.freeFromDay === null
            ? []
            : [[candidate.toolId, standing.freeFromDay]],
        ),
      );
      return [taskOf(facts, line, queued, { kind, perEnd, toolIds, spareIds, freeFromDay })];
    })
    .sort(compareTasks);
}

/** Tools of a kind that are out with a line, and with which. */
export function heldTools(facts: ShopFacts, kind: EdgeKind): Map<string, string> {
  return new Map(
    facts.tools.flatMap((tool): [string, string][] =>
      tool.role === kind && tool.state === 'issued' && tool.jobLineId !== null
        ? [[tool.id, tool.jobLineId]]
        : [],
    ),
  );
}

function exposureDraws(
  { line, hasTableRow }: QueuedLine,
  kind: EdgeKind,
  ensemble: Ensemble,
): Float64Array | undefined {
  const base = line.exposurePerEnd[OPERATION[kind]];
  const factor = ensemble.materialFactor(kind, line.materialId);
  if (!hasTableRow || base === undefined || factor === undefined) return undefined;
  return factor.map((times) => times * base);
}

function taskOf(
  facts: ShopFacts,
  line: LineFacts,
  { startOnDay, dueOnDay }: QueuedLine,
  rest: Pick<EdgeTask, 'kind' | 'perEnd' | 'toolIds' | 'spareIds' | 'freeFromDay'>,
): EdgeTask {
  return {
    ...rest,
    lineId: line.id,
    ends: endsLeftFor(line, OPERATION[rest.kind]),
    required: requiredProbability(facts.shop, line.value),
    startOnDay,
    dueOnDay,
  };
}
