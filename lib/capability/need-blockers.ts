import type { Day } from '../calendar/day';
import type { Blocker, BlockerKind, BlockerReason } from './blocker';
import type { ClaimRefusal } from './claim-items';
import { type FluidShare, isFluidEnough } from './fluid-share';
import type { NeedStatus } from './need-status';

export type UnrankedBlocker = BlockerReason & Omit<Blocker, 'rank' | keyof BlockerReason>;

/**
 * What is in the way of one need, one blocker per kind: why each piece that fits cannot be used, or that lines before
 * have them all, or that the fluid does not go round. 'Missing' only when nothing of the kind is there at all, so a
 * right-hand die is named as what it is.
 */
export function needBlockers(
  status: NeedStatus,
  refused: ClaimRefusal | null,
  fluid: FluidShare | undefined,
): UnrankedBlocker[] {
  const { role, phase } = status.need;
  const base = { role, phase, hard: true } as const;
  if (status.usable.length === 0) {
    const clearsOnDay = status.clearsOnDay;
    return unusable(status).map(([reason, toolIds]) => ({ ...base, ...reason, toolIds, clearsOnDay }));
  }
  if (refused !== null) {
    const { heldByLineId: lineId, untilDay, toolIds } = refused;
    const clearsOnDay = earlier(refused.clearsOnDay, firstLateDay(status));
    return [{ ...base, kind: 'held-elsewhere', lineId, untilDay, toolIds, clearsOnDay }];
  }
  if (role !== 'fluid' || fluid === undefined || isFluidEnough(fluid)) return [];
  const { haveMl, needMl, enoughFromDay: clearsOnDay } = fluid;
  const toolIds = status.usable.flatMap(({ toolId }) => (toolId === null ? [] : [toolId]));
  return [{ ...base, kind: 'fluid-short', haveMl, needMl, toolIds, clearsOnDay }];
}

function unusable({ pieces }: NeedStatus): (readonly [BlockerReason, readonly string[]])[] {
  const byKind = new Map<BlockerKind, { reason: BlockerReason; toolIds: string[] }>();
  for (const { candidate, standing } of pieces) {
    const reason = standing.obstacle;
    if (reason === null || candidate.toolId === null) continue;
    const known = byKind.get(reason.kind);
    if (known === undefined) byKind.set(reason.kind, { reason, toolIds: [candidate.toolId] });
    else {
      known.reason = isNearer(reason, known.reason) ? reason : known.reason;
      known.toolIds.push(candidate.toolId);
    }
  }
  if (byKind.size === 0) return [[{ kind: 'missing' }, []]];
  return [...byKind.values()].map(({ reason, toolIds }) => [reason, toolIds] as const);
}

/** Of two tools with the same obstacle, the one nearer to use speaks for both. */
function isNearer(a: BlockerReason, b: BlockerReason): boolean {
  if (a.kind === 'held-elsewhere' && b.kind === a.kind) return isSooner(a.untilDay, b.untilDay);
  if (a.kind === 'out-for-regrind' && b.kind === a.kind) return isSooner(a.backOnDay, b.backOnDay);
  if (a.kind === 'out-for-calibration' && b.kind === a.kind) return isSooner(a.backOnDay, b.backOnDay);
  if (a.kind === 'calibration-lapses' && b.kind === a.kind) return (a.dueOnDay ?? '') > (b.dueOnDay ?? '');
  if (a.kind === 'fluid-expired' && b.kind === a.kind) return a.expiresOnDay > b.expiresOnDay;
  return false;
}

function isSooner(a: Day | null, b: Day | null): boolean {
  return a !== null && (b === null || a < b);
}

function earlier(a: Day, b: Day | null): Day {
  return b !== null && b < a ? b : a;
}

function firstLateDay({ pieces }: NeedStatus): Day | null {
  const days = pieces.flatMap(({ standing }) =>
    standing.obstacle === null || standing.freeFromDay === null ? [] : [standing.freeFromDay],
  );
  return days.sort()[0] ?? null;
}
