import type { Day } from '../calendar';
import { endsToMake, fluidExpiresOnDay } from '../outlook/plan-facts';
import type { ShopFacts } from '../outlook/shop-facts';
import type { ToolPlan } from '../replacement/tool-plan';
import type { Part } from '../shop/part';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import { compareDueDates, type DueDate, type OrderByDate } from './due-date';

/**
 * Everything of the shop that falls due on a day: starts and due days of open lines, calibrations, fluid running out of
 * date, edges to be changed, orders to be placed and orders on their way. In the order of the calendar. Tools that are
 * scrapped or lost, and lines with nothing left to do, are left out.
 */
export function listDueDates(
  facts: ShopFacts,
  { toolPlans, orderBy }: { toolPlans: readonly ToolPlan[]; orderBy: readonly OrderByDate[] },
): DueDate[] {
  const parts = new Map(facts.parts.map((part) => [part.id, part]));
  const nameOf = (partId: string) => parts.get(partId)?.name ?? partId;
  return [
    ...jobDates(facts),
    ...datedTools(facts, parts),
    ...replacements(facts, toolPlans, nameOf),
    ...arrivals(facts, nameOf),
    ...orderBy.map(
      ({ partId, quantity, orderByDay }): DueDate => ({
        ...{ id: `order-by.${partId}`, kind: 'order-by', onDay: laterDay(orderByDay, facts.today) },
        ...{ partId, quantity, partName: nameOf(partId) },
      }),
    ),
  ].sort(compareDueDates);
}

function jobDates(facts: ShopFacts): DueDate[] {
  return facts.lines.flatMap((line): DueDate[] => {
    const ends = endsToMake(line);
    if (ends === 0) return [];
    const { id: lineId, jobId, connectionId } = line;
    const subject = { jobId, lineId, connectionId, ends };
    return [
      { id: `job-start.${lineId}`, kind: 'job-start', onDay: line.startOnDay, ...subject },
      { id: `job-due.${lineId}`, kind: 'job-due', onDay: line.dueOnDay, ...subject },
    ];
  });
}

function datedTools(facts: ShopFacts, parts: ReadonlyMap<string, Part>): DueDate[] {
  return facts.tools.flatMap((tool): DueDate[] => {
    const part = parts.get(tool.partId);
    if (part === undefined || tool.state === 'scrapped' || tool.state === 'lost') return [];
    const subject = { toolId: tool.id, role: tool.role, partName: part.name };
    if (tool.role === 'fluid') {
      const onDay = tool.levelMl === 0 ? null : fluidExpiresOnDay(tool, part);
      return onDay === null
        ? []
        : [{ id: `fluid-expiry.${tool.id}`, kind: 'fluid-expiry', onDay, ...subject }];
    }
    if (!CALIBRATED_ROLES.includes(tool.role) || tool.dueOnDay === null) return [];
    return [{ id: `calibration.${tool.id}`, kind: 'calibration', onDay: tool.dueOnDay, ...subject }];
  });
}

function replacements(
  facts: ShopFacts,
  toolPlans: readonly ToolPlan[],
  nameOf: (partId: string) => string,
): DueDate[] {
  const roles = new Map(facts.tools.map(({ id, role }) => [id, role]));
  return toolPlans.flatMap((plan): DueDate[] => {
    const role = roles.get(plan.toolId);
    if (plan.onDay === null || role === undefined) return [];
    return [
      {
        id: `replacement.${plan.toolId}`,
        kind: 'replacement',
        onDay: plan.onDay,
        band: { lowDay: plan.lowDay ?? plan.onDay, highDay: plan.highDay },
        toolId: plan.toolId,
        role,
        partName: nameOf(plan.partId),
        planned: plan.moreEnds !== null,
      },
    ];
  });
}

function arrivals(facts: ShopFacts, nameOf: (partId: string) => string): DueDate[] {
  return facts.orders.flatMap((order): DueDate[] => {
    const quantity = order.quantity - order.receivedQuantity;
    if (quantity <= 0) return [];
    const { id: orderId, partId, expectedOnDay: onDay } = order;
    return [
      {
        id: `order-arrival.${orderId}`,
        kind: 'order-arrival',
        onDay,
        orderId,
        quantity,
        partName: nameOf(partId),
      },
    ];
  });
}

/** An order that should have been placed is placed today. */
function laterDay(day: Day, today: Day): Day {
  return day < today ? today : day;
}
