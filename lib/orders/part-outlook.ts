import type { LifeDraws } from '../ensemble/life-draws';
import { requiredProbability } from '../outlook/plan-facts';
import type { ShopFacts } from '../outlook/shop-facts';
import type { Part } from '../shop/part';
import type { EdgeKind } from '../shop/vocabulary';
import { bookedWork } from './booked-work';
import { type EdgeNeed, edgeNeeds } from './edge-need';
import { pacePerDay } from './pace';
import type { PartNeed } from './part-need';
import { piecesOnOrder } from './pieces-on-order';
import { worthRegrinding } from './regrind-supply';
import { mergeNeeds, unplannedNeed } from './unplanned-need';

/** What one part is needed for over a horizon: by the plan, and with what nobody has planned yet. */
export interface PartOutlook {
  readonly part: Part;
  readonly kind: EdgeKind;
  readonly horizonDays: number;
  /** New pieces that the plan's lines need beyond what is here and on order, where buying them helps. */
  readonly planned: PartNeed;
  /** The same with the work that the log's pace says comes beyond the books. */
  readonly total: PartNeed;
  /** As `total`, orders on their drawn days: what runs short, whether or not buying more would help. */
  readonly short: PartNeed;
  /** How sure the shop wants to be: of the most precious line that it serves. */
  readonly service: number;
  /** Lines that run out of this kind of edge in some draw: the share of draws, and the day in each. */
  readonly lines: readonly { readonly lineId: string; readonly shortDays: Float64Array }[];
  readonly onOrder: number;
  readonly drafted: number;
  /** As `total` with no blade reground that is not out already; null where no regrind counts. */
  readonly bought: PartNeed | null;
}

/** Every blade and die part that the plan or the log's pace asks for, with what is needed of it within the horizon. */
export function partOutlooks(facts: ShopFacts, ensemble: LifeDraws, horizonDays: number): PartOutlook[] {
  const worth = worthRegrinding(facts, ensemble);
  const how = 'where-buying-helps';
  const drawn = edgeNeeds(facts, ensemble, 'as-drawn', horizonDays, worth);
  const bought = worth && edgeNeeds(facts, ensemble, how, horizonDays);
  return edgeNeeds(facts, ensemble, how, horizonDays, worth).flatMap((need, i) => {
    const isReground = need.sources.some(({ again }) => again !== undefined);
    const walks = { need, drawn: drawn[i] ?? need, bought: isReground ? bought?.[i] : undefined };
    return need.parts.map((part, p) => outlookOf(walks, p, part, { facts, ensemble, horizonDays }));
  });
}

/** The walk that says what to buy, and the one that says what runs short. */
interface Walks {
  readonly need: EdgeNeed;
  readonly drawn: EdgeNeed;
  /** Without regrinds, where these change anything. */
  readonly bought: EdgeNeed | undefined;
}

interface Asked {
  readonly facts: ShopFacts;
  readonly ensemble: LifeDraws;
  readonly horizonDays: number;
}

function outlookOf({ need, drawn, bought }: Walks, p: number, part: Part, asked: Asked): PartOutlook {
  const { facts, ensemble, horizonDays } = asked;
  const { drawCount } = ensemble;
  const planned = need.walk.parts[p]?.needDays ?? [];
  const mine = need.lines.flatMap((line, i) => (line.part === p ? [{ line, i }] : []));
  const onOrder = piecesOnOrder(facts, part.id);
  const total = withUnplanned(need, p, part, asked);
  const short = withUnplanned(drawn, p, part, asked);
  const name = { partId: part.id, drawCount };
  return {
    ...{ part, kind: need.kind, horizonDays, onOrder },
    planned: { ...name, needDays: planned },
    total: { ...name, needDays: total },
    short: { ...name, needDays: short },
    bought: bought === undefined ? null : { ...name, needDays: withUnplanned(bought, p, part, asked) },
    service: serviceOf(
      facts,
      mine.map(({ line }) => line.lineId),
    ),
    lines: mine.flatMap(({ line, i }) => {
      const shortDays = drawn.walk.shortDays[i];
      return shortDays?.some(Number.isFinite) ? [{ lineId: line.lineId, shortDays }] : [];
    }),
    drafted: (facts.drafts ?? []).reduce(
      (sum, draft) => sum + (draft.partId === part.id ? draft.quantity : 0),
      0,
    ),
  };
}

/** The number of an edge that the plan never comes to: its life is the luck of unplanned work alone. */
const UNPLANNED_PIECE = 1000;

/** The days of a walk’s new pieces with those that unplanned work begins. */
function withUnplanned(need: EdgeNeed, p: number, part: Part, asked: Asked): Float64Array[] {
  const { facts, ensemble, horizonDays } = asked;
  const { drawCount } = ensemble;
  const planned = need.walk.parts[p]?.needDays ?? [];
  const unplanned = unplannedNeed({
    key: part.id,
    paceExposure: pacePerDay(need.kind, part.id, facts, ensemble).map((perDay) => perDay * horizonDays),
    bookedExposure: bookedWork(need.lines, p, horizonDays, drawCount),
    leftOver: need.walk.parts[p]?.leftOver ?? [],
    newLife: ensemble.newLife(part.id, UNPLANNED_PIECE) ?? [],
    ...{ horizonDays, drawCount },
  });
  return mergeNeeds(planned, unplanned, drawCount);
}

function serviceOf(facts: ShopFacts, lineIds: readonly string[]): number {
  const precious = facts.lines.some(({ id, value }) => value === 'precious' && lineIds.includes(id));
  return requiredProbability(facts.shop, precious ? 'precious' : 'ordinary');
}
