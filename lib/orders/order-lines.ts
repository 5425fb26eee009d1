import { type Day, daysBetween } from '../calendar/day';
import { orderableQuantity, purchaseCost } from '../lot-size/purchase-cost';
import { type FluidNeed, fluidNeeds } from '../outlook/fluid-needs';
import type { Outlook } from '../outlook/outlook';
import type { OrderShown } from '../shop/order';
import type { Part } from '../shop/part';
import { compareText } from '../text/compare-text';
import { type MissingPart, missingParts } from './missing-parts';
import { ORDER_HORIZON_DAYS, type OrderProposal, partProposals } from './order-proposals';
import { offersOf, type PartOffer } from './part-offers';

/** One line of what is to be ordered, of whatever kind: what, how many, from whom, for how much, by when, for what. */
export interface OrderLine {
  readonly part: Part;
  readonly quantity: number;
  readonly offer: PartOffer;
  readonly priceMinor: number | null;
  readonly orderByOnDay: Day | null;
  /** Lines of the plan that it is for. */
  readonly lineIds: readonly string[];
  readonly shown: OrderShown | undefined;
  readonly because:
    | { readonly kind: 'edge'; readonly proposal: OrderProposal }
    | { readonly kind: 'fluid'; readonly need: FluidNeed }
    | { readonly kind: 'missing'; readonly missing: MissingPart };
}

/** What the orders page stands on: lines to order, what needs no order, and what the shop's list of parts lacks. */
export interface OrderBook {
  readonly horizonDays: number;
  readonly toOrder: readonly OrderLine[];
  readonly covered: readonly OrderProposal[];
  readonly unlisted: readonly MissingPart[];
}

/**
 * Everything to be ordered within the horizon, the soonest order-by day first: blades and dies by the futures, fluids by
 * their use, whole items that lines are stopped for. What is drafted already is not proposed again.
 */
export function orderBook(outlook: Outlook, horizonDays = ORDER_HORIZON_DAYS): OrderBook {
  const { facts } = outlook;
  const proposals = partProposals(facts, outlook.ensemble, horizonDays);
  const missing = missingParts(facts, outlook.lines);
  const drafted = new Set((facts.drafts ?? []).map(({ partId }) => partId));
  const open = (line: OrderLine) => line.because.kind === 'edge' || !drafted.has(line.part.id);
  const toOrder = [
    ...proposals.flatMap(edgeLine),
    ...fluidNeeds(facts).flatMap((need) => fluidLine(need, outlook, horizonDays)),
    ...missing.flatMap(missingLine),
  ].filter(open);
  return {
    horizonDays,
    toOrder: toOrder.sort((a, b) => compareText(a.orderByOnDay ?? '', b.orderByOnDay ?? '')),
    covered: proposals.filter(({ quantity }) => quantity === 0),
    unlisted: missing.filter(({ part }) => part === null),
  };
}

function edgeLine(proposal: OrderProposal): OrderLine[] {
  const { part, quantity, chosen, orderByOnDay, runsOut, lines } = proposal;
  if (quantity === 0) return [];
  const shown = { stockOutProbability: runsOut.probability, orderByOnDay };
  return [
    {
      ...{ part, quantity, orderByOnDay, shown },
      offer: chosen.offer,
      priceMinor: chosen.priceMinor,
      lineIds: lines.map(({ lineId }) => lineId),
      because: { kind: 'edge', proposal },
    },
  ];
}

function fluidLine(need: FluidNeed, { facts }: Outlook, horizonDays: number): OrderLine[] {
  const { part, orderByDay, containers } = need;
  const [offer] = offersOf(part);
  const coming = facts.orders.some(({ partId }) => partId === part.id);
  if (offer === undefined || orderByDay === null || coming) return [];
  if (daysBetween(facts.today, orderByDay) > horizonDays) return [];
  return [lineOf(part, containers, offer, orderByDay, [], { kind: 'fluid', need })];
}

function missingLine(missing: MissingPart): OrderLine[] {
  const { part, orderByOnDay, lineIds } = missing;
  const offer = part === null ? undefined : offersOf(part)[0];
  if (part === null || offer === undefined) return [];
  return [lineOf(part, 1, offer, orderByOnDay, lineIds, { kind: 'missing', missing })];
}

/** What is needed in the packs and least quantities in which it is sold. */
function lineOf(
  part: Part,
  needed: number,
  offer: PartOffer,
  orderByOnDay: Day | null,
  lineIds: readonly string[],
  because: OrderLine['because'],
): OrderLine {
  const quantity = orderableQuantity(offer.terms, needed);
  const priceMinor = offer.priceMinor === null ? null : purchaseCost(offer.terms, quantity);
  return { part, quantity, offer, priceMinor, orderByOnDay, lineIds, shown: undefined, because };
}
