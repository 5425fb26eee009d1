import type { Ensemble } from '../ensemble/build-ensemble';
import type { ShopFacts } from '../outlook/shop-facts';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import type { EdgeTask } from './edge-task';
import { type JobOrder, jobOrders, playOrder } from './job-order';
import { shopTasks } from './shop-tasks';

/** Lines that live on the same edges, which may not be enough for all of them. */
export interface ShortGroup {
  readonly kind: EdgeKind;
  readonly partId: string;
  readonly toolIds: readonly string[];
  /** In the order in which they begin. */
  readonly inTurn: JobOrder;
  /** The order that finishes most of them. */
  readonly best: JobOrder;
  /** Share of the futures in which all of them are finished. */
  readonly allFinished: number;
}

/**
 * Where the edges of a part that are here may not do for all the lines that want them: in which order to cut, counted on the
 * same futures as everything else. Orders on their way are left out: that is what it comes to if none arrives in time.
 */
export function shortGroups(facts: ShopFacts, ensemble: Ensemble): ShortGroup[] {
  return EDGE_KINDS.flatMap((kind) => {
    const tasks = shopTasks(facts, ensemble, kind);
    const partOf = new Map(facts.tools.map(({ id, partId }) => [id, partId]));
    const partIds = [
      ...new Set(tasks.flatMap((task) => [...task.freeFromDay.keys()].flatMap((id) => partOf.get(id) ?? []))),
    ].sort();
    return partIds.flatMap((partId) => {
      const mine = tasks.filter((task) =>
        [...task.freeFromDay.keys()].some((id) => partOf.get(id) === partId),
      );
      return mine.length < 2 ? [] : groupOf(mine, { kind, partId, partOf, ensemble });
    });
  });
}

function groupOf(
  tasks: readonly EdgeTask[],
  {
    kind,
    partId,
    partOf,
    ensemble,
  }: { kind: EdgeKind; partId: string; partOf: ReadonlyMap<string, string>; ensemble: Ensemble },
): ShortGroup[] {
  const ids = new Set(tasks.flatMap((task) => [...task.freeFromDay.keys()]));
  const toolIds = [...ids].filter((id) => partOf.get(id) === partId).sort();
  const life = new Float64Array(ensemble.drawCount);
  for (const id of toolIds) {
    const has = ensemble.residualLife(id);
    if (has) for (let k = 0; k < life.length; k++) life[k] = (life[k] as number) + (has[k] as number);
  }
  const inTurn = playOrder(tasks, life);
  const allFinished = inTurn.probabilities.at(-1) ?? 0;
  const required = Math.max(...tasks.map((task) => task.required));
  const [best] = jobOrders(tasks, life);
  if (allFinished >= required || best === undefined) return [];
  return [{ kind, partId, toolIds, inTurn, best, allFinished }];
}
