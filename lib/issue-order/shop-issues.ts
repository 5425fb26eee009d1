import type { Ensemble } from '../ensemble/build-ensemble';
import type { ShopFacts } from '../outlook/shop-facts';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import { shopTasks } from './shop-tasks';
import { type IssueWeek, planWeeks } from './week-plan';

/** The issue order of the shop's open lines, by kind of edge. */
export type ShopIssues = Readonly<Record<EdgeKind, readonly IssueWeek[]>>;

const kept = new WeakMap<Ensemble, { facts: ShopFacts; issues: ShopIssues }>();

/** Works the issue order of the whole plan out, once to an ensemble and its facts. */
export function shopIssues(facts: ShopFacts, ensemble: Ensemble): ShopIssues {
  const known = kept.get(ensemble);
  if (known?.facts === facts) return known.issues;
  const [blade, die] = EDGE_KINDS.map((kind) => weeksOf(facts, ensemble, kind));
  const issues: ShopIssues = { blade: blade ?? [], die: die ?? [] };
  kept.set(ensemble, { facts, issues });
  return issues;
}

function weeksOf(facts: ShopFacts, ensemble: Ensemble, kind: EdgeKind): IssueWeek[] {
  const tasks = shopTasks(facts, ensemble, kind);
  const wanted = [...new Set(tasks.flatMap(({ spareIds }) => spareIds))].sort();
  const supplies = wanted.flatMap((toolId) => {
    const life = ensemble.residualLife(toolId);
    return life === undefined ? [] : [{ toolId, life }];
  });
  return planWeeks(tasks, supplies);
}
