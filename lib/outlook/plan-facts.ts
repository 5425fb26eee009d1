import { addDays } from '../calendar/day';
import type { Arrival, PlanConnection, PlanLine, SetItem } from '../capability/plan-input';
import type { SizeProbe } from '../capability/size-status';
import { expectedMlPerEnd } from '../fluid/use-per-end';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import type { Shop } from '../shop/shop-settings';
import type { CutOperation, Operation } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import type { LineFacts, OrderFacts, ShopFacts, ToolFacts } from './shop-facts';

/** Days from a delivery to the shelf: the receiving check. Common practice 1 to 2 days, no source. */
export const RECEIVING_DAYS = 1;
/** Settings of a shop that has none yet. */
const PROBABILITY = { ordinary: 0.9, precious: 0.95 };

/** What one end of a connection asks for: exposure of each edge, and fluid. */
export function demandOf(
  connection: Connection | undefined,
  operations: readonly Operation[],
  settings: { dropsPerMl: number | undefined; wasteFactor: number | undefined },
): Pick<PlanLine, 'exposurePerEnd' | 'fluidMlPerEnd'> {
  if (connection === undefined) return { exposurePerEnd: {}, fluidMlPerEnd: 0 };
  const cone = operations.includes('cone');
  const thread = operations.includes('thread');
  const turns = thread ? exposureOfEnd({ operation: 'thread', connection }) : 0;
  const exposurePerEnd = {
    cone: cone ? exposureOfEnd({ operation: 'cone', connection }) : undefined,
    thread: thread ? turns : undefined,
  };
  return {
    exposurePerEnd,
    fluidMlPerEnd: cone || thread ? expectedMlPerEnd({ cone, turns, ...settings }) : 0,
  };
}

type Progress = Pick<LineFacts, 'ends' | 'operations' | 'goodCones' | 'goodThreads'>;

/** Ends of a line that one operation has not yet made good; none where the line does not ask for it. */
export function endsLeftFor(line: Progress, operation: CutOperation): number {
  if (!line.operations.includes(operation)) return 0;
  return Math.max(0, line.ends - (operation === 'cone' ? line.goodCones : line.goodThreads));
}

/** Ends of a line still to make: those not yet through all of its cutting. Assembly alone is done when the job is closed. */
export function endsToMake(line: Progress): number {
  const cuts = line.operations.some((operation) => operation !== 'assemble');
  return cuts ? Math.max(endsLeftFor(line, 'cone'), endsLeftFor(line, 'thread')) : line.ends;
}

/** What is still to be done to a line: a cut that is made on every end needs no edge and no gauge any more. */
function operationsLeft(line: LineFacts): Operation[] {
  return line.operations.filter((operation) => operation === 'assemble' || endsLeftFor(line, operation) > 0);
}

/** The lines of the open jobs as the plan check takes them. */
export function planLines(facts: ShopFacts): PlanLine[] {
  const connections = new Map(facts.connections.map((connection) => [connection.id, connection]));
  const settings = fluidSettings(facts);
  return facts.lines.map((line) => {
    const operations = operationsLeft(line);
    return {
      lineId: line.id,
      jobId: line.jobId,
      connectionId: line.connectionId,
      materialId: line.materialId,
      endsToMake: endsToMake(line),
      operations,
      startOnDay: line.startOnDay,
      dueOnDay: line.dueOnDay,
      requiredProbability: requiredProbability(facts.shop, line.value),
      ...demandOf(connections.get(line.connectionId), operations, settings),
    };
  });
}

/** How sure the shop wants to be of a line: surer of what cannot be remade. */
export function requiredProbability(shop: Shop | undefined, value: LineFacts['value']): number {
  if (value === 'precious') return shop?.requiredProbabilityPrecious ?? PROBABILITY.precious;
  return shop?.requiredProbability ?? PROBABILITY.ordinary;
}

/** The shop's size table as the plan check takes it. */
export function planConnections(facts: ShopFacts): PlanConnection[] {
  return facts.connections.map(({ id, hand }) => ({ connectionId: id, hand }));
}

/** The sizes in use, each asked for one end in the reference material. */
export function sizeProbes(facts: ShopFacts): SizeProbe[] {
  const settings = fluidSettings(facts);
  return facts.connections
    .filter((connection) => connection.inUse)
    .map((connection) => ({
      connectionId: connection.id,
      hand: connection.hand,
      ...demandOf(connection, ['cone', 'thread'], settings),
    }));
}

/** The tools as the plan check takes them; scrapped and lost ones serve nothing. */
export function setItems(facts: ShopFacts): SetItem[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return facts.tools.flatMap((tool) => {
    const part = parts.get(tool.partId);
    return part === undefined || tool.state === 'scrapped' || tool.state === 'lost'
      ? []
      : [setItem(tool, part)];
  });
}

function setItem(tool: ToolFacts, part: Part): SetItem {
  return {
    toolId: tool.id,
    partId: tool.partId,
    role: tool.role,
    hand: tool.hand ?? undefined,
    fitsConnectionIds: fitsOf(part),
    state: tool.state,
    backOnDay: tool.backOnDay,
    heldForLineId: tool.jobLineId,
    dueOnDay: tool.dueOnDay,
    expiresOnDay: fluidExpiresOnDay(tool, part),
    levelMl: tool.levelMl,
    permittedMaterialIds: part.role === 'fluid' ? part.permittedMaterialIds : undefined,
  };
}

/** A part that names no size serves all of them, where its kind is not bound to a size. */
function fitsOf(part: Part): Arrival['fitsConnectionIds'] {
  const unbound = part.role === 'fluid' || part.role === 'brush' || part.role === 'deburr-tool';
  return unbound && part.fitsConnectionIds.length === 0 ? 'all' : part.fitsConnectionIds;
}

/** The day to the end of which a fluid may be used: the earlier of shelf life and opened life. */
export function fluidExpiresOnDay(
  tool: Pick<ToolFacts, 'expiresOnDay' | 'openedOnDay'>,
  part: Pick<Part, 'openedLifeDays'>,
): string | null {
  const opened =
    tool.openedOnDay === null || part.openedLifeDays === null
      ? null
      : addDays(tool.openedOnDay, part.openedLifeDays);
  const days = [opened, tool.expiresOnDay].filter((day) => day !== null);
  return days.sort()[0] ?? null;
}

/** What open orders will bring, the receiving check counted in. A late order keeps its day in the past: no date. */
export function planArrivals(facts: ShopFacts): Arrival[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return facts.orders.flatMap((order) => {
    const part = parts.get(order.partId);
    return part === undefined ? [] : [arrivalOf(order, part, facts.today)];
  });
}

function arrivalOf(order: OrderFacts, part: Part, today: string): Arrival {
  const isLate = order.expectedOnDay < today;
  return {
    orderId: order.id,
    partId: part.id,
    role: part.role,
    hand: part.hand ?? undefined,
    fitsConnectionIds: fitsOf(part),
    quantity: order.quantity - order.receivedQuantity,
    expectedOnDay: isLate ? order.expectedOnDay : addDays(order.expectedOnDay, RECEIVING_DAYS),
    permittedMaterialIds: part.role === 'fluid' ? part.permittedMaterialIds : undefined,
    levelMl: part.containerMl ?? undefined,
  };
}

function fluidSettings(facts: ShopFacts): {
  dropsPerMl: number | undefined;
  wasteFactor: number | undefined;
} {
  const dropsPerMl = facts.parts.find(
    (part) => part.role === 'fluid' && part.dropsPerMl !== null,
  )?.dropsPerMl;
  return { dropsPerMl: dropsPerMl ?? undefined, wasteFactor: facts.shop?.fluidWasteFactor };
}
