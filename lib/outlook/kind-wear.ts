import type { KindDraws } from '../ensemble/kind-draws';
import { type Band, bandOf } from '../ensemble/reasons';
import type { EdgeCounts, LifeWarning } from '../life/life-fit';
import type { EdgeKind } from '../shop/vocabulary';
import { isEdgeKind } from './edge-histories';
import type { Outlook } from './outlook';
import type { ShopFacts } from './shop-facts';

/** What beliefs and log together say of one kind of edge, beyond how long each part lasts. */
export interface KindWear {
  readonly kind: EdgeKind;
  readonly counts: EdgeCounts;
  /** Weibull shape (log-logistic lives: of as much scatter): 1 breaks by chance, above 1 wears out. */
  readonly shape: Band;
  /** Probability that the shape is above 1. */
  readonly probabilityWearsOut: number;
  /** Probability that lives are log-logistic, a few edges lasting far longer than the rest; and as it was believed before. */
  readonly longTail: { readonly probability: number; readonly believed: number };
  /** Life after a regrind ÷ life before. */
  readonly regrind: Band;
  /** Times the wear when cutting dry, and when recutting. */
  readonly dry: Band;
  readonly rework: Band;
  /** Typical lives to one accident. */
  readonly livesPerIncident: Band;
  readonly seen: ConditionsSeen;
  readonly warnings: readonly LifeWarning[];
}

/** How much of the log speaks of each of these; nothing seen: the figure is what was believed before. */
export interface ConditionsSeen {
  readonly regroundEdges: number;
  readonly dryEnds: number;
  readonly reworkEnds: number;
}

/** Undefined where the kind has no fit. The draws are those behind every other screen, to the digit. */
export function kindWear(
  { facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>,
  kind: EdgeKind,
): KindWear | undefined {
  const draws = ensemble.draws(kind);
  if (draws === undefined) return undefined;
  const { fit } = draws;
  const factor = (name: string): Band => bandOf(figureOf(draws, name).map(Math.exp));
  const medians = figureOf(draws, 'logMedian');
  const lives = draws.incidentRate.map((rate, k) => 1 / (rate * Math.exp(medians[k] as number)));
  return {
    ...{ kind, counts: fit.counts, warnings: fit.warnings },
    shape: bandOf(draws.shape),
    probabilityWearsOut: draws.shape.filter((shape) => shape > 1).length / draws.drawCount,
    longTail: {
      probability: (draws.logLogistic?.reduce((sum, one) => sum + one, 0) ?? 0) / draws.drawCount,
      believed: fit.layout.logLogisticChance,
    },
    regrind: factor('regrind'),
    dry: factor('dry'),
    rework: factor('rework'),
    livesPerIncident: bandOf(lives),
    seen: conditionsSeen(facts, kind),
  };
}

function figureOf({ fit, figures, drawCount }: KindDraws, name: string): Float64Array {
  return figures[fit.layout.indexOf[name] as number] ?? new Float64Array(drawCount);
}

/** Ends cut dry and cut again, and edges reground that have cut something, of one kind. */
export function conditionsSeen(facts: Pick<ShopFacts, 'tools' | 'edges'>, kind: EdgeKind): ConditionsSeen {
  const roles = new Map(facts.tools.map(({ id, role }) => [id, role]));
  const edges = facts.edges.filter(({ toolId }) => {
    const role = roles.get(toolId);
    return role !== undefined && isEdgeKind(role) && role === kind;
  });
  const uses = edges.flatMap(({ use }) => use);
  const endsOf = (wanted: (use: (typeof uses)[number]) => boolean) =>
    uses.filter(wanted).reduce((sum, { ends }) => sum + ends, 0);
  return {
    regroundEdges: edges.filter(({ edgeNo, use }) => edgeNo > 1 && use.length > 0).length,
    dryEnds: endsOf(({ dry }) => dry),
    reworkEnds: endsOf(({ rework }) => rework),
  };
}
