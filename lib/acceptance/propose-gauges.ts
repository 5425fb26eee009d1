import type { Day } from '../calendar';
import type { Part } from '../shop/part';
import type { Hand, Role, ToolState } from '../shop/vocabulary';

/** A tool as far as it may be proposed. */
export interface ToolAtHand {
  readonly id: string;
  readonly partId: string;
  readonly role: Role;
  readonly hand: Hand | null;
  readonly state: ToolState;
  readonly jobLineId: string | null;
  readonly dueOnDay: Day | null;
}

/** What is laid before the person at the vise for one kind of gauge. */
export interface GaugeProposal {
  readonly role: Role;
  /** Filled in: the one issued for this line, or the only one that may be used. Null: more than one could be meant. */
  readonly toolId: string | null;
  readonly dueOnDay: Day | null;
  /** All that may be used, those issued for the line first. */
  readonly candidateIds: readonly string[];
}

/**
 * Which gauge of a kind to fill in for a line: the one issued for it; else the only one of that size and hand in the house
 * and in date. Where several could be meant none is guessed: the gauge is scanned.
 */
export function proposeGauge(
  tools: readonly ToolAtHand[],
  parts: ReadonlyMap<string, Pick<Part, 'fitsConnectionIds'>>,
  wanted: {
    readonly role: Role;
    readonly connectionId: string;
    readonly hand: Hand;
    readonly lineId: string;
    readonly today: Day;
  },
): GaugeProposal {
  const usable = tools.filter(
    (tool) =>
      tool.role === wanted.role &&
      (tool.state === 'in-crib' || tool.state === 'issued') &&
      (tool.hand === null || tool.hand === wanted.hand) &&
      tool.dueOnDay !== null &&
      tool.dueOnDay >= wanted.today &&
      parts.get(tool.partId)?.fitsConnectionIds.includes(wanted.connectionId) === true,
  );
  const forLine = usable.filter(({ jobLineId }) => jobLineId === wanted.lineId);
  const rest = usable.filter((tool) => !forLine.includes(tool));
  const [only] = forLine.length > 0 ? forLine : usable;
  const chosen = (forLine.length > 0 ? forLine : usable).length === 1 ? only : undefined;
  return {
    role: wanted.role,
    toolId: chosen?.id ?? null,
    dueOnDay: chosen?.dueOnDay ?? null,
    candidateIds: [...forLine, ...rest].map(({ id }) => id),
  };
}
