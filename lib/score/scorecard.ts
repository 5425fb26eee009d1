import { type BandCase, bandCoverage } from './band-coverage';
import type { Prediction } from './prediction';
import { scoreCases } from './score-cases';
import type { Scorecard, ScoredCase } from './scored-case';

/**
 * The scorecard over stored predictions: ours, beside the shop’s fixed count on the cases that both spoke of, undefined while
 * nothing has been settled. Choose the predictions (kind, time) before calling.
 */
export function scorecardOf(predictions: readonly Prediction[]): Scorecard {
  const scored = predictions.filter(({ settled }) => settled !== null && settled.outcome !== null);
  const both = scored.filter(({ fixedCount }) => fixedCount !== undefined);
  const bands = predictions.flatMap(({ band, settled, what }): BandCase[] =>
    band !== undefined && settled?.lasted !== undefined
      ? [{ band, lasted: settled.lasted, edge: edgeOf(what) }]
      : [],
  );
  return {
    ours: scoreCases(scored.map((prediction) => caseOf(prediction, prediction.probability))),
    oursOnSame: scoreCases(both.map((prediction) => caseOf(prediction, prediction.probability))),
    fixedCount: scoreCases(both.map((prediction) => caseOf(prediction, prediction.fixedCount ?? 0))),
    voided: predictions.filter(({ settled }) => settled !== null && settled.outcome === null).length,
    open: predictions.filter(({ settled }) => settled === null).length,
    coverage: bandCoverage(bands),
  };
}

function caseOf({ settled, what }: Prediction, probability: number): ScoredCase {
  return { probability, outcome: settled?.outcome === true, edge: edgeOf(what) };
}

/** Names the edge that a prediction was about; undefined where it was about something else. */
export function edgeOf({ toolId, edgeNo }: Prediction['what']): string | undefined {
  return toolId === undefined ? undefined : `${edgeNo ?? 1}:${toolId}`;
}
