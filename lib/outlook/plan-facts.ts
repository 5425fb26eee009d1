import { addDays } from '../calendar/day';
import type { Arrival, PlanConnection, PlanLine, SetItem } from '../capability/plan-input';
import type { SizeProbe } from '../capability/size-status';
import { bottleUseBy } from '../fluid/use-by';
import { expectedMlPerEnd } from '../fluid/use-per-end';
import { usableToDay } from '../gauge/due';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { servesEverySize } from '../shop/serves-size';
import type { Shop } from '../shop/shop-settings';
import type { CutOperation, Operation } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import { chlorinatedOf, fluidWork, learntUse } from './fluid-facts';
import { orderArrivalDays, RECEIVING_DAYS } from './order-arrivals';
import type { LineFacts, OrderFacts, ShopFacts, ToolFacts } from './shop-facts';

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
      ...cutsLeftIn(line),
      operations,
      startOnDay: line.startOnDay,
      dueOnDay: line.dueOnDay,
      requiredProbability: requiredProbability(facts.shop, line.value),
      cannotBeRemade: line.value === 'precious',
      ...dutyOf(facts, line),
      ...demandOf(connections.get(line.connectionId), operations, settings),
      ...fluidOfCutsLeft(line, connections.get(line.connectionId), settings),
    };
  });
}

/** The fluid of the cuts still to make, spread over the ends, where one kind of cut is ahead of the other. */
function fluidOfCutsLeft(
  line: LineFacts,
  connection: Connection | undefined,
  settings: Parameters<typeof demandOf>[2],
): Partial<Pick<PlanLine, 'fluidMlPerEnd'>> {
  const { cutsLeft } = cutsLeftIn(line);
  if (cutsLeft === undefined) return {};
  const mlOf = (cut: CutOperation): number =>
    cutsLeft[cut] * demandOf(connection, [cut], settings).fluidMlPerEnd;
  return { fluidMlPerEnd: (mlOf('cone') + mlOf('thread')) / endsToMake(line) };
}

/** The cuts of each kind, where one is ahead of the other: ends that are coned ask nothing more of a blade. */
function cutsLeftIn(line: LineFacts): Pick<PlanLine, 'cutsLeft'> {
  const [cone, thread] = [endsLeftFor(line, 'cone'), endsLeftFor(line, 'thread')];
  return cone === thread || cone === 0 || thread === 0 ? {} : { cutsLeft: { cone, thread } };
}

/** What the fluids must know of a line. */
function dutyOf(facts: ShopFacts, line: LineFacts): Pick<PlanLine, 'duty' | 'titanium'> {
  const { duty, titanium } = fluidWork(facts, line);
  return { duty, titanium };
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

/** The material that wears edges at factor 1: the one that sizes are asked in. */
export function referenceMaterialId(facts: ShopFacts): string {
  return facts.materials.find(({ isReference }) => isReference)?.id ?? 'reference';
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
  const unused = unusedTools(facts);
  return facts.tools.flatMap((tool) => {
    const part = parts.get(tool.partId);
    return part === undefined || tool.state === 'scrapped' || tool.state === 'lost'
      ? []
      : [{ ...setItem(facts, tool, part), ...(unused.has(tool.id) ? { isUnused: true } : {}) }];
  });
}

/** Tools whose first edge is in service and has cut nothing, here or before it was entered. */
function unusedTools({ tools, edges }: ShopFacts): Set<string> {
  const known = new Map(edges.map((edge) => [edge.toolId, edge]));
  const isUnused = ({ id, opening }: ToolFacts): boolean => {
    const last = known.get(id);
    return opening.known === 'new' && last?.edgeNo === 1 && last.end === null && last.use.length === 0;
  };
  return new Set(tools.filter(isUnused).map(({ id }) => id));
}

function setItem(facts: ShopFacts, tool: ToolFacts, part: Part): SetItem {
  return {
    toolId: tool.id,
    partId: tool.partId,
    role: tool.role,
    hand: tool.hand ?? undefined,
    fitsConnectionIds: fitsOf(part),
    state: tool.state,
    backOnDay: tool.backOnDay,
    heldForLineId: tool.jobLineId,
    needsFirstOff: tool.firstOffOwed === true,
    reservation: tool.reservation ?? null,
    dueOnDay: gaugeUsableTo(facts, tool),
    expiresOnDay: fluidExpiresOnDay(tool, part),
    levelMl: tool.levelMl,
    ...(part.role === 'fluid' ? fluidItem(facts, tool, part) : { permittedMaterialIds: undefined }),
  };
}

/** A gauge's due day; yesterday once the ends that its calibration is good for are used up. */
function gaugeUsableTo({ gaugeUse = [], today }: ShopFacts, { id, dueOnDay }: ToolFacts): string | null {
  const use = gaugeUse.find(({ toolId }) => toolId === id);
  return use === undefined
    ? dueOnDay
    : usableToDay({ dueOnDay, interval: use, endsSince: use.endsSince }, today);
}

/** What a bottle is permitted on, and its day without any extension. */
function fluidItem(facts: ShopFacts, tool: ToolFacts, part: Part): Partial<SetItem> {
  const { permittedMaterialIds, permittedDuties, openedLifeDays } = part;
  const { expiresOnDay, openedOnDay } = tool;
  const labelledUseByDay = bottleUseBy({ expiresOnDay, openedOnDay, openedLifeDays }).onDay;
  return {
    permittedMaterialIds,
    permittedDuties,
    chlorinated: chlorinatedOf(facts, tool, part),
    labelledUseByDay,
  };
}

/** A part that names no size serves all of them, where its kind is not bound to a size. */
export function fitsOf(part: Part): Arrival['fitsConnectionIds'] {
  return servesEverySize(part) ? 'all' : part.fitsConnectionIds;
}

/** The day to the end of which a fluid may be used: the earlier of shelf life and opened life, or its extension. */
export function fluidExpiresOnDay(
  tool: Pick<ToolFacts, 'expiresOnDay' | 'openedOnDay' | 'extendedUntilDay'>,
  part: Pick<Part, 'openedLifeDays'>,
): string | null {
  const { expiresOnDay, openedOnDay, extendedUntilDay } = tool;
  return bottleUseBy({ expiresOnDay, openedOnDay, openedLifeDays: part.openedLifeDays, extendedUntilDay })
    .onDay;
}

/**
 * What open orders will bring, the receiving check counted in, each with its drawn days where its supplier's word is on
 * record. A late order keeps its day in the past: no stated date, but its drawn days go on from today.
 */
export function planArrivals(facts: ShopFacts): Arrival[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  return facts.orders.flatMap((order) => {
    const part = parts.get(order.partId);
    return part === undefined ? [] : [arrivalOf(order, part, facts)];
  });
}

function arrivalOf(order: OrderFacts, part: Part, facts: ShopFacts): Arrival {
  const isLate = order.expectedOnDay < facts.today;
  return {
    orderId: order.id,
    partId: part.id,
    role: part.role,
    hand: part.hand ?? undefined,
    fitsConnectionIds: fitsOf(part),
    quantity: order.quantity - order.receivedQuantity,
    expectedOnDay: isLate ? order.expectedOnDay : addDays(order.expectedOnDay, RECEIVING_DAYS),
    arrivalDayDraws: orderArrivalDays(facts, order, part),
    levelMl: part.containerMl ?? undefined,
    ...(part.role === 'fluid' ? fluidArrival(order, part) : {}),
  };
}

/** What a can on order will be permitted on. Its lot is not known yet: what is said of the product counts. */
function fluidArrival(order: OrderFacts, part: Part): Partial<Arrival> {
  const { permittedMaterialIds, permittedDuties, chlorinated, shelfLifeDays } = part;
  const expiresOnDay = shelfLifeDays ? addDays(order.expectedOnDay, shelfLifeDays) : null;
  return { permittedMaterialIds, permittedDuties, chlorinated, expiresOnDay };
}

function fluidSettings(facts: ShopFacts): { dropsPerMl: number; wasteFactor: number } {
  const { dropsPerMl, ratio } = learntUse(facts);
  return { dropsPerMl, wasteFactor: ratio.mean };
}
