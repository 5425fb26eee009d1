import { setNeeds } from '../capability/complete-set';
import { fluidExpiresOnDay } from '../outlook/plan-facts';
import type { Part } from '../shop/part';
import { EDGE_KINDS, type EdgeKind, type Operation, type Role } from '../shop/vocabulary';
import type { KitTool } from './judge-custody';
import { judgeItem, type KitNeed } from './judge-item';
import type { KitScan } from './kit-stop';

/** One need of the set with the tool that is to go out for it. */
export interface KitProposal {
  readonly role: Role;
  /** Null: the crib has none that may go. */
  readonly toolId: string | null;
  readonly why: ProposalWhy;
  /** Something to mind about the proposed tool. */
  readonly mind: string | null;
  /** Others that may go as well, the next best first. */
  readonly otherIds: readonly string[];
  /** Those that fit but may not go, with what is in the way. */
  readonly stopped: readonly Extract<KitScan, { goes: false }>[];
}

export type ProposalWhy =
  /** Already with this line, so it need not go out again. */
  | 'with-the-line'
  | 'kept-for-it'
  | 'only-one'
  /** Blade or die: the week's issue order says so. */
  | 'issue-order'
  /** A gauge in date to the end of the job that falls due soonest, so that the others last. */
  | 'soonest-due'
  /** First expired, first out. */
  | 'first-expired'
  | 'first-free'
  | 'none';

/** A tool of the crib with its part. */
export interface KitStock {
  readonly tool: KitTool;
  readonly part: Part;
}

/**
 * The exact tools of a kit for one line: for each need of the complete set, in bench order, the one tool that should go
 * out, why, and what else could. `edgeChoice` is the week's issue order for blade and die; without it, the first that may go.
 */
export function proposeKit(
  need: Omit<KitNeed, 'roles' | 'scannedIds'> & { readonly operations: readonly Operation[] },
  stock: readonly KitStock[],
  edgeChoice: Partial<Record<EdgeKind, string>> = {},
): KitProposal[] {
  const roles = setNeeds(need.operations).map(({ role }) => role);
  return roles.map((role) => {
    const ofRole = stock.filter(({ tool, part }) => tool.role === role && suits(part, need.connection.id));
    const withLine = ofRole.find(({ tool }) => tool.state === 'issued' && tool.jobLineId === need.line.id);
    if (withLine !== undefined)
      return { role, toolId: withLine.tool.id, why: 'with-the-line', mind: null, otherIds: [], stopped: [] };
    return chooseFor(role, ofRole, { ...need, roles, scannedIds: [] }, edgeChoice);
  });
}

function chooseFor(
  role: Role,
  ofRole: readonly KitStock[],
  need: KitNeed,
  edgeChoice: Partial<Record<EdgeKind, string>>,
): KitProposal {
  const judged = ofRole.map((stock) => ({ ...stock, scan: judgeItem(stock.tool, stock.part, need) }));
  const free = judged.filter(({ scan }) => scan.goes).sort((a, b) => compare(a, b));
  const stopped = judged.flatMap(({ scan }) => (scan.goes ? [] : [scan]));
  const [first] = free;
  if (first === undefined) return { role, toolId: null, why: 'none', mind: null, otherIds: [], stopped };
  const kept = free.find(({ tool }) => tool.reservation?.jobLineId === need.line.id);
  const wanted = free.find(({ tool }) => tool.id === edgeChoice[role as EdgeKind]);
  const chosen = kept ?? wanted ?? first;
  return {
    role,
    toolId: chosen.tool.id,
    why: kept
      ? 'kept-for-it'
      : free.length === 1
        ? 'only-one'
        : wanted
          ? 'issue-order'
          : whyFirst(role, first),
    mind: chosen.scan.goes ? chosen.scan.mind : null,
    otherIds: free.flatMap(({ tool }) => (tool.id === chosen.tool.id ? [] : [tool.id])),
    stopped,
  };
}

/** Those without anything to mind first; then the one that runs out soonest; then by ID. */
function compare(a: KitStock & { scan: KitScan }, b: KitStock & { scan: KitScan }): number {
  const mindful = Number(minds(a.scan)) - Number(minds(b.scan));
  if (mindful !== 0) return mindful;
  const days = compareText(lastDay(a), lastDay(b));
  return days !== 0 ? days : compareText(a.tool.id, b.tool.id);
}

function minds(scan: KitScan): boolean {
  return scan.goes && scan.mind !== null;
}

/** The day it runs out of date, blank and so last where it never does. An opened bottle goes before a closed one of its day. */
function lastDay({ tool, part }: KitStock): string {
  const day = tool.role === 'fluid' ? fluidExpiresOnDay(tool, part) : tool.dueOnDay;
  return `${day ?? '9999-12-31'} ${tool.openedOnDay === null ? 1 : 0}`;
}

function whyFirst(role: Role, { tool }: KitStock): ProposalWhy {
  if (role === 'fluid') return 'first-expired';
  if (EDGE_KINDS.some((kind) => kind === role)) return 'first-free';
  return tool.dueOnDay === null ? 'first-free' : 'soonest-due';
}

function suits(part: Part, connectionId: string): boolean {
  return part.fitsConnectionIds.length === 0 || part.fitsConnectionIds.includes(connectionId);
}

function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
