import 'server-only';
import { edgeSays } from '@/app/_shared/words/issue-words';
import type { Db } from '@/db/open';
import type { LineRow } from '@/db/queries/jobs';
import { listKitStock } from '@/db/queries/kit-stock';
import { proposeTools, type ToolProposal } from '@/lib/issue-order/propose-tools';
import type { KitNeed } from '@/lib/kit/judge-item';
import { type ProposalWhy, proposeKit } from '@/lib/kit/propose-kit';
import type { Outlook } from '@/lib/outlook/outlook';
import { type EdgeKind, ROLE_LABEL, type Role } from '@/lib/shop/vocabulary';

/** One row of the counter's list: what the set needs, the tool that should go, and why that one. */
export interface KitCounterRow {
  readonly role: Role;
  readonly label: string;
  readonly toolId: string | null;
  readonly why: string;
  readonly mind: string | null;
  readonly others: readonly string[];
  /** Already out with this line. */
  readonly isOut: boolean;
  /** Of an edge, what the plan says of each that could go: does it cover the line, why it, what to take along. By tool. */
  readonly says: Readonly<Record<string, readonly string[]>>;
}

const WHY: Record<ProposalWhy, string> = {
  'with-the-line': 'already out with this line',
  'kept-for-it': 'kept for this line',
  'only-one': 'the only one that may go',
  'issue-order': 'the week’s issue order',
  'soonest-due': 'due soonest of those that last the job',
  'first-expired': 'first to expire goes first',
  'first-free': 'the first that is free',
  none: '',
};

/** The kit of a line as the counter shows it: blade and die by the week's issue order, the rest by their dates. */
export function kitRows(
  db: Db,
  line: LineRow,
  need: KitNeed,
  { facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>,
): KitCounterRow[] {
  const proposals = proposeTools(facts, ensemble, line.id);
  const edgeChoice: Partial<Record<EdgeKind, string>> = {};
  for (const { kind, chosen } of proposals) if (chosen !== null) edgeChoice[kind] = chosen.toolId;
  const kit = proposeKit({ ...need, operations: line.operations }, listKitStock(db), edgeChoice);
  return kit.map(({ role, toolId, why, mind, otherIds, stopped }) => ({
    role,
    label: ROLE_LABEL[role],
    toolId,
    why: why === 'none' ? (stopped[0]?.sentence ?? 'none in the record for this size') : WHY[why],
    mind,
    others: otherIds,
    isOut: why === 'with-the-line',
    says: saysOf(proposals.find(({ kind }) => kind === role)),
  }));
}

function saysOf(proposal: ToolProposal | undefined): Record<string, readonly string[]> {
  if (proposal === undefined) return {};
  const { chosen, next, runnersUp } = proposal;
  const known = [...(chosen === null ? [] : [chosen]), ...next, ...runnersUp];
  return Object.fromEntries(known.map(({ toolId }) => [toolId, edgeSays(proposal, toolId)]));
}
