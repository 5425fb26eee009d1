import type { LifeDraws } from '../ensemble/life-draws';
import type { EdgeKind } from '../shop/vocabulary';
import { EDGE_KINDS } from '../shop/vocabulary';
import { cutsLeftOf } from './cuts-left';
import { isWithinLife } from './ends-left';
import type { QueuedLine } from './line-order';
import type { NeedStatus } from './need-status';

/** How one kind of edge may be used on a line that cannot be remade: two ways, either will do. */
export interface EdgePolicy {
  readonly kind: EdgeKind;
  /** The tool most likely to cut every end by itself, as it stands today, and how likely. Null when there is none. */
  readonly surest: { readonly toolId: string; readonly pFinishes: number } | null;
  /** First way: the surest one is sure enough. */
  readonly isSureEnough: boolean;
  /** Second way: edges that have cut nothing yet, each to cut a practice end on scrap tube of the same heat first. */
  readonly newToolIds: readonly string[];
  /** New pieces on order that are there by the start. */
  readonly newOnOrder: number;
}

/**
 * The two ways in which work of high value may be cut: with one edge that finishes all its ends with the required
 * probability, or with a new edge and a practice end. An edge that is done in mid-line spoils an end that cannot be
 * remade, so several worn edges that last together are no way. For spools that are bent already, or cut to length.
 * Undefined for a line that can be remade. Common practice, no source.
 */
export function valuePolicy(
  { line, hasTableRow }: QueuedLine,
  statuses: readonly NeedStatus[],
  draws: LifeDraws,
  requiredProbability: number,
): readonly EdgePolicy[] | undefined {
  if (line.cannotBeRemade !== true || !hasTableRow) return undefined;
  return EDGE_KINDS.flatMap((kind): EdgePolicy[] => {
    const status = statuses.find(({ need }) => need.role === kind);
    const factors = draws.materialFactor(kind, line.materialId);
    const exposurePerEnd = line.exposurePerEnd[kind === 'die' ? 'thread' : 'cone'];
    if (status === undefined || factors === undefined || exposurePerEnd === undefined) return [];
    const surest = surestTool(
      status,
      draws,
      (k) => exposurePerEnd * cutsLeftOf(line, kind) * (factors[k] as number),
    );
    return [
      {
        kind,
        surest,
        isSureEnough: surest !== null && surest.pFinishes >= requiredProbability,
        newToolIds: status.usable.flatMap(({ toolId, isUnused }) =>
          toolId !== null && isUnused ? [toolId] : [],
        ),
        newOnOrder: status.usable.filter(({ toolId }) => toolId === null).length,
      },
    ];
  });
}

/** Whether either way is open for this kind of edge. */
export function hasWay({ isSureEnough, newToolIds, newOnOrder }: EdgePolicy): boolean {
  return isSureEnough || newToolIds.length > 0 || newOnOrder > 0;
}

function surestTool(
  status: NeedStatus,
  draws: LifeDraws,
  needAt: (k: number) => number,
): EdgePolicy['surest'] {
  let surest: EdgePolicy['surest'] = null;
  for (const { toolId } of status.usable) {
    const life = toolId === null ? undefined : draws.residualLife(toolId);
    if (toolId === null || life === undefined) continue;
    let count = 0;
    for (let k = 0; k < life.length; k++) if (isWithinLife(needAt(k), life[k] as number)) count++;
    const pFinishes = count / life.length;
    if (surest === null || pFinishes > surest.pFinishes) surest = { toolId, pFinishes };
  }
  return surest;
}
