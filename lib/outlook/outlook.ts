import { checkPlan } from '../capability/check-plan';
import type { LineVerdict } from '../capability/line-verdict';
import { type SizeStatus, sizeStatuses } from '../capability/size-status';
import type { Ensemble } from '../ensemble/build-ensemble';
import { referenceMaterialId, sizeProbes } from './plan-facts';
import type { ShopFacts } from './shop-facts';
import { shopFutures } from './shop-futures';
import { shopPlan } from './shop-plan';
import { type CutInHand, type ToolForecast, toolForecast } from './tool-forecast';

/** What the shop can make and what its edges have left, at one version of its record: what every screen reads. */
export interface Outlook {
  readonly facts: ShopFacts;
  readonly ensemble: Ensemble;
  /** A verdict for every line of the open jobs, in the order in which they are served. */
  readonly lines: readonly LineVerdict[];
  /** Every size in use: can one end of it be made and accepted today? */
  readonly sizes: readonly SizeStatus[];
  forecast(toolId: string, cut: CutInHand): ToolForecast | undefined;
}

/**
 * Computes the outlook from the shop's record: one ensemble, and every answer a count over it. `ensemble`: the shop's, where
 * it is worked out already.
 */
export function computeOutlook(facts: ShopFacts, ensemble: Ensemble = shopFutures(facts).ensemble): Outlook {
  const plan = shopPlan(facts, ensemble);
  return outlookOver(ensemble, {
    facts,
    lines: checkPlan(plan),
    sizes: sizeStatuses({ ...plan, connections: sizeProbes(facts), materialId: referenceMaterialId(facts) }),
  });
}

/** What an outlook holds beside its futures: plain data. */
export type OutlookAnswers = Omit<Outlook, 'ensemble' | 'forecast'>;

/** An outlook of answers worked out already and the futures that they are counts over. */
export function outlookOver(ensemble: Ensemble, answers: OutlookAnswers): Outlook {
  return {
    ...answers,
    ensemble,
    forecast: (toolId, cut) => toolForecast(answers.facts, ensemble, { toolId, cut }),
  };
}
