import { setNeeds } from '../capability/complete-set';
import type { ShopFacts } from '../outlook/shop-facts';
import { ok, type Result, refuse } from '../result';
import { OPERATIONS } from '../shop/vocabulary';
import { newOrder, newPieces } from './added-pieces';
import type { Change, ChangeOf } from './change';
import { changeLine, newLine } from './changed-line';
import { changeTool } from './changed-tool';

/** The record as it would be: the facts with the changes made, and by how many days orders would slip. */
export interface ChangedRecord {
  readonly facts: ShopFacts;
  readonly slipDays: ReadonlyMap<string, number>;
}

/** What an extra bench brings: one more of what sizes share and a line holds. */
const BENCH_ROLES = setNeeds(OPERATIONS)
  .filter(({ sharedBetweenSizes, heldByLine }) => sharedBetweenSizes && heldByLine)
  .map(({ role }) => role);

/**
 * The record with changes tried on it, one after the other, nothing of it saved. Refuses a change that names what the shop
 * does not have. The facts that no change names are the very same objects.
 */
export function applyChanges(facts: ShopFacts, changes: readonly Change[]): Result<ChangedRecord> {
  let record: ChangedRecord = { facts, slipDays: new Map() };
  for (const [at, change] of changes.entries()) {
    const changed = applyChange(record, change, `what-if-${at + 1}`);
    if (!changed.ok) return changed;
    record = changed.value;
  }
  return ok(record);
}

function applyChange(record: ChangedRecord, change: Change, mark: string): Result<ChangedRecord> {
  const { facts } = record;
  switch (change.kind) {
    case 'add-line':
      return ok({ ...record, facts: { ...facts, lines: [...facts.lines, newLine(change, mark)] } });
    case 'change-dates':
    case 'change-material':
    case 'change-ends':
    case 'drop-line':
      return withFacts(record, changeLine(facts, change));
    case 'lose-tool':
    case 'free-tool':
    case 'calibrate-tool':
    case 'regrind-tool':
      return withFacts(record, changeTool(facts, change));
    case 'slip-order':
      return slipOrder(record, change);
    case 'add-order':
      return withFacts(record, placeOrder(facts, change, mark));
    case 'add-tool':
      return withFacts(record, buyTools(facts, change, mark));
    case 'add-bench':
      return ok({ ...record, facts: addBench(facts, change, mark) });
  }
}

function withFacts(record: ChangedRecord, facts: Result<ShopFacts>): Result<ChangedRecord> {
  return facts.ok ? ok({ ...record, facts: facts.value }) : facts;
}

function slipOrder(record: ChangedRecord, { orderId, days }: ChangeOf<'slip-order'>): Result<ChangedRecord> {
  if (!record.facts.orders.some(({ id }) => id === orderId))
    return refuse('unknown-order', `There is no open order ${orderId}.`, 'orderId');
  const slipDays = new Map(record.slipDays);
  slipDays.set(orderId, (slipDays.get(orderId) ?? 0) + days);
  return ok({ ...record, slipDays });
}

function placeOrder(facts: ShopFacts, change: ChangeOf<'add-order'>, mark: string): Result<ShopFacts> {
  const part = facts.parts.find(({ id }) => id === change.partId);
  if (part === undefined) return noPart(change.partId);
  if (change.promisedOnDay < facts.today)
    return refuse('day-past', 'The day promised lies in the past.', 'promisedOnDay');
  const supplier = change.supplier ?? part.supplier;
  return ok({ ...facts, orders: [...facts.orders, newOrder(facts, { ...change, supplier, mark })] });
}

function buyTools(facts: ShopFacts, change: ChangeOf<'add-tool'>, mark: string): Result<ShopFacts> {
  const part = facts.parts.find(({ id }) => id === change.partId);
  if (part === undefined) return noPart(change.partId);
  const { tools, edges } = newPieces(facts, part, { quantity: change.quantity, mark });
  return ok({ ...facts, tools: [...facts.tools, ...tools], edges: [...facts.edges, ...edges] });
}

function noPart(partId: string): Result<never> {
  return refuse('unknown-part', `There is no part ${partId} in the list.`, 'partId');
}

/** One more of each shared body that the shop has. */
function addBench(facts: ShopFacts, { quantity }: ChangeOf<'add-bench'>, mark: string): ShopFacts {
  const owned = new Set(facts.tools.map(({ partId }) => partId));
  const shared = facts.parts.filter(({ id, role }) => BENCH_ROLES.includes(role) && owned.has(id));
  const tools = shared.flatMap((part) => newPieces(facts, part, { quantity, mark }).tools);
  return { ...facts, tools: [...facts.tools, ...tools] };
}
