import type { EarlyDeaths, GroupedBy, GroupFlag } from '../compare/comparison';
import { earlyDeaths, type LotTool } from '../compare/early-deaths';
import { FLAG_MINIMUM, flagGroup } from '../compare/flag-group';
import type { GroupedEdge } from '../compare/grouped-edge';
import type { LifeFitInput } from '../life/fit-life';
import { EDGE_KINDS, type EdgeKind, type ToolState } from '../shop/vocabulary';
import { type Bottle, type EdgeGroups, edgeGroups } from './edge-groups';
import { edgeHistories, isEdgeKind } from './edge-histories';
import { edgeLives } from './edge-lives';
import { groupedEdges } from './grouped-edges';
import { firstGuesses, lifePriors } from './life-beliefs';
import type { Outlook } from './outlook';
import { partWears } from './part-wear';
import type { ShopFacts } from './shop-facts';
import type { ToolLog } from './stored-predictions';

/** Lots, suppliers, heats and fluids beside the rest, and the lots that the early-death rule proposes to hold. */
export interface ShopComparisons {
  /** Groups with enough in the log to be judged, those flagged first. */
  readonly judged: readonly { readonly kind: EdgeKind; readonly flag: GroupFlag }[];
  /** Groups that the log holds too little of, or that have nothing to stand beside. */
  readonly tooLittle: number;
  readonly holds: readonly LotToHold[];
}

/** A lot that the rule proposes to hold, with its tools that could still go out. */
export interface LotToHold extends EarlyDeaths {
  readonly leftIds: readonly string[];
}

const GROUPINGS: readonly GroupedBy[] = ['lot', 'supplier', 'heat', 'fluid-lot', 'fluid-product'];

type Shop = Pick<Outlook, 'facts' | 'ensemble'>;

/**
 * Asks of every lot, supplier, heat and fluid whether its edges die early. Each question takes a fit of its own: seconds for a whole
 * shop, so not for the path of a request.
 */
export function compareGroups(shop: Shop, logs: readonly ToolLog[]): ShopComparisons {
  const { facts } = shop;
  const groups = edgeGroups(logs, facts.parts, bottlesOf(facts));
  const histories = edgeHistories(facts);
  const flags = EDGE_KINDS.flatMap((kind) => {
    const fit: LifeFitInput = {
      ...{ kind, histories, guesses: firstGuesses(kind, facts) },
      priors: lifePriors(kind, facts.materials, facts.beliefs),
    };
    const ofKind = histories.filter((history) => history.kind === kind);
    return GROUPINGS.flatMap((groupedBy) =>
      [...groupedEdges(ofKind, groups, groupedBy)].map(([groupId, edges]) => {
        const can = canBeJudged(edges, ofKind.filter(({ end }) => end === 'worn').length);
        const flag = can ? flagGroup({ groupedBy, groupId, edges, fit }) : undefined;
        return flag && { kind, flag };
      }),
    );
  });
  const judged = flags.filter((flag) => flag !== undefined);
  return {
    judged: judged.sort((a, b) => rankOf(a.flag) - rankOf(b.flag)),
    tooLittle: flags.length - judged.length,
    holds: lotsToHold(shop, logs, groups),
  };
}

/** Every bottle of fluid that the shop has or had. A bottle without a lot stands for itself. */
function bottlesOf({ tools, parts }: Pick<ShopFacts, 'tools' | 'parts'>): Bottle[] {
  const names = new Map(parts.map(({ id, name }) => [id, name]));
  return tools.flatMap(({ id, role, lot, partId }) =>
    role === 'fluid' ? [{ id, lot: lot || id, product: names.get(partId) ?? partId }] : [],
  );
}

/** Enough of the group to judge it, and enough besides it to stand it beside. */
function canBeJudged(edges: readonly GroupedEdge[], wornOfKind: number): boolean {
  const worn = edges.filter(({ history }) => history.end === 'worn').length;
  const ends = edges.reduce((sum, edge) => sum + edge.ends, 0);
  const { edges: leastEdges, worn: leastWorn, ends: leastEnds } = FLAG_MINIMUM;
  const besides = wornOfKind - worn >= leastWorn;
  return edges.length >= leastEdges && worn >= leastWorn && ends >= leastEnds && besides;
}

function rankOf({ verdict, effect }: GroupFlag): number {
  return (verdict === 'flagged' ? 0 : 1) - effect.probabilityLower;
}

/** Lots of which the first few tools died early, by their first edges, while any of them could still go out. */
export function lotsToHold(shop: Shop, logs: readonly ToolLog[], groups: readonly EdgeGroups[]): LotToHold[] {
  const shares = usedShares(shop);
  const lots = new Map<string, LotTool[]>();
  for (const { toolId, edgeNo, lot } of groups) {
    const log = logs.find((candidate) => candidate.toolId === toolId);
    const tool = log && firstEdge(log, shares.get(toolId) ?? 0);
    if (edgeNo !== 1 || lot === undefined || tool === undefined) continue;
    lots.set(lot, [...(lots.get(lot) ?? []), tool]);
  }
  return [...lots]
    .map(([lot, tools]) => ({ ...earlyDeaths(lot, tools), leftIds: leftOf(shop, groups, lot) }))
    .filter(({ proposeHold, leftIds }) => proposeHold && leftIds.length > 0)
    .sort((a, b) => (a.lot < b.lot ? -1 : 1));
}

/** Tools of a lot that stand in the crib, are out on work or away for regrind. */
function leftOf({ facts }: Shop, groups: readonly EdgeGroups[], lot: string): string[] {
  const ofLot = new Set(groups.flatMap((group) => (group.lot === lot ? [group.toolId] : [])));
  const gone: readonly ToolState[] = ['scrapped', 'lost', 'quarantined'];
  return facts.tools.flatMap(({ id, state }) => (ofLot.has(id) && !gone.includes(state) ? [id] : []));
}

/** The first edge of a tool; undefined where it was never used. */
function firstEdge({ toolId, entries }: ToolLog, usedShare: number): LotTool | undefined {
  const renewed = entries.findIndex(({ kind }) => kind === 'edge-renewed');
  const first = renewed < 0 ? entries : entries.slice(0, renewed);
  const used = first.find(({ kind }) => kind === 'cut-logged');
  const ended = first.find(({ kind }) => kind === 'edge-ended');
  if (used?.kind !== 'cut-logged') return undefined;
  const cause = ended?.kind === 'edge-ended' ? ended.payload.cause : null;
  return { toolId, firstUsedAtMs: used.payload.cutAtMs, cause, usedShare };
}

/** What the first edge of every tool has cut, as a share of its part's typical life. */
function usedShares(shop: Shop): Map<string, number> {
  const parts = partWears(shop).filter(({ part }) => isEdgeKind(part.role));
  return new Map(
    parts.flatMap(({ part, typicalEnds }) =>
      edgeLives(shop, part.id)
        .filter(({ edgeNo }) => edgeNo === 1)
        .map(({ toolId, ageEnds }): [string, number] => [toolId, ageEnds / typicalEnds.median]),
    ),
  );
}
