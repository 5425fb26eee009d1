import type { Role } from '../shop/vocabulary';
import type { ClaimRefusal } from './claim-items';
import type { FluidShare } from './fluid-share';
import type { LifeOutlook } from './life-outlook';
import type { QueuedLine } from './line-order';
import type { LineVerdict, Verdict } from './line-verdict';
import { needBlockers, type UnrankedBlocker } from './need-blockers';
import type { NeedStatus } from './need-status';
import { rankBlockers } from './rank-blockers';
import { type EdgePolicy, hasWay } from './value-policy';

/** All that the walk has found out about one line. */
export interface LineFindings {
  readonly queued: QueuedLine;
  readonly statuses: readonly NeedStatus[];
  /** Lines before it that have the pieces, by role. */
  readonly refusals: ReadonlyMap<Role, ClaimRefusal>;
  readonly fluid: FluidShare | undefined;
  /** Undefined: no edge is worn, or nothing is known of it. */
  readonly outlook: LifeOutlook | undefined;
  readonly materialKnown: boolean;
  /** For a line that cannot be remade. */
  readonly policy: readonly EdgePolicy[] | undefined;
  readonly requiredProbability: number;
  readonly floorProbability: number;
}

/**
 * The verdict on one line. Can make: every hard need holds and P ≥ required. At risk: hard needs hold, P between floor
 * and required, or work that cannot be
 * remade has neither a sure edge nor a new one. Cannot make now: a hard need fails, or P below the floor. A floor above the
 * requirement counts as it.
 */
export function lineVerdictOf(findings: LineFindings): LineVerdict {
  const { queued, outlook, policy } = findings;
  const blockers = rankBlockers([
    ...refusedOutright(findings),
    ...findings.statuses.flatMap((status) =>
      needBlockers(status, findings.refusals.get(status.need.role) ?? null, findings.fluid),
    ),
    ...livesShort(findings),
    ...noSureEdges(findings),
  ]);
  const hard = blockers.filter((blocker) => blocker.hard);
  const unknown = !queued.hasTableRow || !findings.materialKnown;
  const pMade = queued.needs.length > 0 && unknown ? 0 : (outlook?.pMade ?? 1);
  const days = blockers.map(({ clearsOnDay }) => clearsOnDay);
  return {
    lineId: queued.line.lineId,
    jobId: queued.line.jobId,
    verdict: verdictOf(findings, hard.length > 0, pMade),
    canCut: hard.every(({ phase }) => phase !== 'cut'),
    canAccept: hard.every(({ phase, role }) => phase !== 'accept' && role !== null),
    pMade,
    blockers,
    clearsOnDay: days.includes(null) ? null : (days.sort().at(-1) ?? null),
    safeEnds: outlook?.safeEnds ?? null,
    likelyEnds: outlook?.likelyEnds ?? null,
    limitingRole: blockers[0] ? blockers[0].role : (outlook?.shorterEdge ?? null),
    shorterEdge: outlook?.shorterEdge ?? null,
    ...(policy === undefined ? {} : { valuePolicy: policy }),
  };
}

function verdictOf(
  { policy, requiredProbability: required, floorProbability: floor }: LineFindings,
  hardFails: boolean,
  pMade: number,
): Verdict {
  if (hardFails || pMade < Math.min(floor, required)) return 'cannot-make-now';
  return pMade < required || policy?.some((edge) => !hasWay(edge)) ? 'at-risk' : 'can-make';
}

/** Edges of a line that cannot be remade that have no way, unless their life is short anyway. */
function noSureEdges({ statuses, outlook, policy = [] }: LineFindings): UnrankedBlocker[] {
  return policy.flatMap((edge): UnrankedBlocker[] => {
    const status = statuses.find(({ need }) => need.role === edge.kind);
    const isShort = outlook?.short.some(({ kind }) => kind === edge.kind);
    if (hasWay(edge) || isShort || edge.surest === null || status === undefined) return [];
    const coming = status.pieces.flatMap(({ candidate, standing }) =>
      candidate.toolId === null && standing.freeFromDay !== null ? [standing.freeFromDay] : [],
    );
    return [
      {
        kind: 'no-sure-edge',
        role: edge.kind,
        phase: 'cut',
        hard: false,
        pFinishes: edge.surest.pFinishes,
        toolIds: [edge.surest.toolId],
        clearsOnDay: coming.sort()[0] ?? null,
      },
    ];
  });
}

function refusedOutright({ queued, materialKnown }: LineFindings): UnrankedBlocker[] {
  if (queued.needs.length === 0) return [];
  const base = { role: null, phase: 'cut', hard: true, toolIds: [], clearsOnDay: null } as const;
  const blockers: UnrankedBlocker[] = [];
  if (!queued.hasTableRow) blockers.push({ ...base, kind: 'unknown-connection' });
  if (!materialKnown) blockers.push({ ...base, kind: 'unknown-material' });
  return blockers;
}

/** Where there is no usable edge at all, that is the blocker, and its life is not worth a second one. */
function livesShort({ statuses, outlook }: LineFindings): UnrankedBlocker[] {
  return (outlook?.short ?? []).flatMap((edge): UnrankedBlocker[] => {
    const status = statuses.find(({ need }) => need.role === edge.kind);
    if (status === undefined || status.usable.length === 0) return [];
    const { kind: role, pMade, safeEnds, likelyEnds } = edge;
    const toolIds = status.usable.flatMap(({ toolId }) => (toolId === null ? [] : [toolId]));
    const clearsOnDay = outlook?.enoughFromDay ?? null;
    return [
      {
        kind: 'life-short',
        role,
        phase: 'cut',
        hard: false,
        pMade,
        safeEnds,
        likelyEnds,
        toolIds,
        clearsOnDay,
      },
    ];
  });
}
