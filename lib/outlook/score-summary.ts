import { type BandCase, bandCoverage, type Coverage } from '../score/band-coverage';
import type { Prediction } from '../score/prediction';
import { edgeOf, scorecardOf } from '../score/scorecard';
import type { Scorecard } from '../score/scored-case';

/** A scorecard with what a lead asks of it beside: how often each was simply wrong, and how good the bands were. */
export interface ScoreSummary {
  readonly card: Scorecard;
  /** Cases in which even chances or better were given and it did not finish, or the other way about. */
  readonly wrong: { readonly cases: number; readonly ours: number; readonly fixedCount: number };
  /** Of the bands shown of edges that have worn out since, whose life is so known in full. */
  readonly coverage: Coverage | undefined;
}

/** Fewer settled cases than this are too little to judge a forecaster by. Common practice, no source. */
export const CASES_TO_JUDGE = 30;

/** Scores a set of predictions, for the page that asks how often they were right. */
export function scoreSummary(predictions: readonly Prediction[]): ScoreSummary {
  const both = predictions.flatMap(({ probability, fixedCount, settled }) =>
    fixedCount === undefined || settled === null || settled.outcome === null
      ? []
      : [{ probability, fixedCount, outcome: settled.outcome }],
  );
  const bands = predictions.flatMap(({ band, settled, what }): BandCase[] =>
    band !== undefined && settled?.lasted?.exact === true
      ? [{ band, lasted: settled.lasted, edge: edgeOf(what) }]
      : [],
  );
  return {
    card: scorecardOf(predictions),
    wrong: {
      cases: both.length,
      ours: both.filter(({ probability, outcome }) => probability >= 0.5 !== outcome).length,
      fixedCount: both.filter(({ fixedCount, outcome }) => (fixedCount === 1) !== outcome).length,
    },
    coverage: bandCoverage(bands),
  };
}
