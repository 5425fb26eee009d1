import { addDays, type Day } from '../calendar/day';
import type { LifeDraws } from '../ensemble/life-draws';
import { checkPlan } from './check-plan';
import { laterDay } from './line-order';
import type { LineVerdict } from './line-verdict';
import type { Arrival, EndDemand, PlanConnection, PlanLine, PlanTargets, SetItem } from './plan-input';

/** A connection that the shop keeps, with what one end of it costs. */
export type SizeProbe = PlanConnection & EndDemand;

export interface SizeInput {
  readonly today: Day;
  readonly connections: readonly SizeProbe[];
  /** The material in which the question is asked: the one that wears edges at factor 1. */
  readonly materialId: string;
  readonly items: readonly SetItem[];
  readonly arrivals: readonly Arrival[];
  readonly draws: LifeDraws;
  readonly targets?: PlanTargets | undefined;
  /** The plan, so that a tool out on a line has a day on which it is due back. Its demand is not counted. */
  readonly lines?: readonly PlanLine[] | undefined;
}

export type SizeStatus = Omit<LineVerdict, 'lineId' | 'jobId'> & { readonly connectionId: string };

/**
 * For every connection that the shop keeps: could it cone, thread and accept one end of it today, and how many more
 * are in the edges that are here? Each size is asked on its own, as if nothing else were planned; what is out with a
 * line now is out. For the strip of sizes on the front page. In the order of the connections given.
 */
export function sizeStatuses(input: SizeInput): SizeStatus[] {
  const heldUntil = new Map(input.lines?.map(({ lineId, dueOnDay }) => [lineId, dueOnDay]));
  const items = input.items.map((item) => withReturnDay(item, heldUntil, input.today));
  return input.connections.flatMap((connection) => {
    const line = oneEnd(connection, input.materialId, input.today);
    const fits = ({ fitsConnectionIds: ids }: { readonly fitsConnectionIds: readonly string[] | 'all' }) =>
      ids === 'all' || ids.includes(connection.connectionId);
    const verdicts = checkPlan({
      today: input.today,
      lines: [line],
      connections: [connection],
      items: items.filter(fits),
      arrivals: input.arrivals,
      draws: input.draws,
      targets: input.targets,
    });
    return verdicts.map(({ lineId: _lineId, jobId: _jobId, ...status }) => ({
      connectionId: connection.connectionId,
      ...status,
    }));
  });
}

/** One end of a size, coned, threaded and accepted on one day. */
export function oneEnd(probe: SizeProbe, materialId: string, today: Day): PlanLine {
  const { connectionId, exposurePerEnd, fluidMlPerEnd } = probe;
  return {
    lineId: '',
    jobId: '',
    connectionId,
    materialId,
    endsToMake: 1,
    operations: ['cone', 'thread'],
    startOnDay: today,
    dueOnDay: today,
    exposurePerEnd,
    fluidMlPerEnd,
  };
}

/** Tells an item out on a line when it is due back, since that line is not in the question. */
function withReturnDay(item: SetItem, heldUntil: ReadonlyMap<string, Day>, today: Day): SetItem {
  const lineDueOnDay = item.heldForLineId ? heldUntil.get(item.heldForLineId) : undefined;
  if (item.state !== 'issued' || item.backOnDay || lineDueOnDay === undefined) return item;
  return { ...item, backOnDay: addDays(laterDay(lineDueOnDay, today), 1) };
}
