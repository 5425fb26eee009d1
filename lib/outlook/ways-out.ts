import type { Blocker } from '../capability/blocker';
import { setNeeds } from '../capability/complete-set';
import { fluidObjection } from '../fluid/permit-fluid';
import type { Part } from '../shop/part';
import { servesSize } from '../shop/serves-size';
import { OPERATIONS, type Role } from '../shop/vocabulary';
import { fluidWork } from './fluid-facts';
import type { LineFacts, OrderFacts, ShopFacts } from './shop-facts';

/** Something that can be done about a blocker. */
export type WayOut =
  | { readonly kind: 'add-size'; readonly connectionId: string }
  | { readonly kind: 'add-material'; readonly materialId: string }
  /** The shop's list has no such part for this size. */
  | { readonly kind: 'add-part'; readonly role: Role }
  | { readonly kind: 'place-order'; readonly part: Part }
  | { readonly kind: 'see-order'; readonly order: OrderFacts; readonly late: boolean }
  | { readonly kind: 'receive'; readonly part: Part; readonly orderId: string | null }
  | { readonly kind: 'see-tool'; readonly toolId: string }
  | { readonly kind: 'change-dates'; readonly jobId: string };

const HAND_BOUND: readonly Role[] = setNeeds(OPERATIONS).flatMap(({ role, handBound }) =>
  handBound ? [role] : [],
);

/**
 * What can be done about one blocker of one line, the most direct way first. Never empty: where nothing else is known,
 * the dates can be changed. For "next step" on the front page and the rows of a line's checklist.
 */
export function waysOut(blocker: Blocker, line: LineFacts, facts: ShopFacts): WayOut[] {
  if (blocker.kind === 'unknown-connection') return [{ kind: 'add-size', connectionId: line.connectionId }];
  if (blocker.kind === 'unknown-material') return [{ kind: 'add-material', materialId: line.materialId }];
  const dates: WayOut[] = [{ kind: 'change-dates', jobId: line.jobId }];
  const tools = blocker.toolIds.slice(0, 2).map((toolId): WayOut => ({ kind: 'see-tool', toolId }));
  const supply = blocker.role === null ? [] : supplyOf(blocker.role, line, facts);
  switch (blocker.kind) {
    case 'held-elsewhere':
      return blocker.lineId === null ? [...tools, ...supply, ...dates] : [...dates, ...tools, ...supply];
    case 'missing':
    case 'fluid-not-permitted':
      return [...supply, ...dates];
    case 'life-short':
    case 'no-sure-edge':
    case 'fluid-short':
    case 'fluid-expired':
      return [...supply, ...tools, ...dates];
    default:
      return [...tools, ...supply, ...dates];
  }
}

/** Where one more of a role would come from: an order on its way, else one to place, or one to receive at once. */
function supplyOf(role: Role, line: LineFacts, facts: ShopFacts): WayOut[] {
  const parts = partsFor(role, line, facts);
  const [part] = parts;
  const hasTableRow = facts.connections.some(({ id }) => id === line.connectionId);
  if (part === undefined) return hasTableRow ? [{ kind: 'add-part', role }] : [];
  const order = facts.orders.find(({ partId }) => parts.some(({ id }) => id === partId));
  if (order === undefined)
    return [
      { kind: 'place-order', part },
      { kind: 'receive', part, orderId: null },
    ];
  const ordered = parts.find(({ id }) => id === order.partId) ?? part;
  return [
    { kind: 'see-order', order, late: order.expectedOnDay < facts.today },
    { kind: 'receive', part: ordered, orderId: order.id },
    { kind: 'place-order', part },
  ];
}

/** The parts of the shop's list that would meet one need of a line: of its size, hand and material. */
export function partsFor(role: Role, line: LineFacts, facts: ShopFacts): Part[] {
  return facts.parts.filter((part) => part.role === role && serves(part, line, facts));
}

function serves(part: Part, line: LineFacts, facts: ShopFacts): boolean {
  const hand = facts.connections.find(({ id }) => id === line.connectionId)?.hand ?? 'LH';
  if (HAND_BOUND.includes(part.role) && part.hand !== hand) return false;
  if (part.role === 'fluid' && fluidObjection(part, fluidWork(facts, line)) !== null) return false;
  return servesSize(part, line.connectionId);
}
