import { setNeeds } from '../capability/complete-set';
import { bottleOfTool } from '../fluid/bottle-of-tool';
import { bottleStanding, compareFirst } from '../fluid/pick-first';
import type { Part } from '../shop/part';
import { servesSize } from '../shop/serves-size';
import { EDGE_KINDS, type EdgeKind, type Operation, type Role } from '../shop/vocabulary';
import { compareText } from '../text/compare-text';
import { dueBeforeDone, judgeCondition } from './judge-condition';
import type { KitTool } from './judge-custody';
import { judgeFit } from './judge-fit';
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
  /** Already with this line and in order, so it need not go out again. */
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
    const ofRole = stock.filter(
      ({ tool, part }) => tool.role === role && servesSize(part, need.connection.id),
    );
    const asked = { ...need, roles, scannedIds: [] };
    const withLine = ofRole.find((item) => isWithLine(item, asked));
    if (withLine === undefined) return chooseFor(role, ofRole, asked, edgeChoice);
    const mind = dueBeforeDone(withLine.tool, need.line.dueOnDay);
    return { role, toolId: withLine.tool.id, why: 'with-the-line', mind, otherIds: [], stopped: [] };
  });
}

/** Out with the line and in order for it. What is out with it and must not be used there has to be replaced. */
function isWithLine({ tool, part }: KitStock, need: KitNeed): boolean {
  if (tool.state !== 'issued' || tool.jobLineId !== need.line.id) return false;
  return (judgeFit(tool, part, need) ?? judgeCondition(tool, part, need)) === null;
}

function chooseFor(
  role: Role,
  ofRole: readonly KitStock[],
  need: KitNeed,
  edgeChoice: Partial<Record<EdgeKind, string>>,
): KitProposal {
  const judged = ofRole.map((stock) => ({ ...stock, scan: judgeItem(stock.tool, stock.part, need) }));
  const free = judged.filter(({ scan }) => scan.goes).sort(orderOf(role, need));
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

type Judged = KitStock & { readonly scan: KitScan };

/** Fluid by first expired, first out; the rest without anything to mind first, then the one due soonest, then by ID. */
function orderOf(role: Role, { fluidWork, today }: KitNeed): (a: Judged, b: Judged) => number {
  if (role !== 'fluid')
    return (a, b) =>
      Number(minds(a)) - Number(minds(b)) ||
      compareText(a.tool.dueOnDay ?? NEVER, b.tool.dueOnDay ?? NEVER) ||
      compareText(a.tool.id, b.tool.id);
  const standing = ({ tool, part }: KitStock) => bottleStanding(bottleOfTool(tool, part), fluidWork, today);
  return (a, b) => compareFirst(standing(a), standing(b));
}

const NEVER = '9999-12-31';

function minds({ scan }: Judged): boolean {
  return scan.goes && scan.mind !== null;
}

function whyFirst(role: Role, { tool }: KitStock): ProposalWhy {
  if (role === 'fluid') return 'first-expired';
  if (EDGE_KINDS.some((kind) => kind === role)) return 'first-free';
  return tool.dueOnDay === null ? 'first-free' : 'soonest-due';
}
