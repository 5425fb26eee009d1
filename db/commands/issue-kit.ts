import type { Permit } from '../../lib/access/permit';
import { setNeeds } from '../../lib/capability/complete-set';
import { judgeItem } from '../../lib/kit/judge-item';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { currentEdge } from '../../lib/ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { IssueKit } from '../../lib/shop/kit-input';
import { toolKey } from '../../lib/shop/tool-id';
import type { Role } from '../../lib/shop/vocabulary';
import { derivedId } from '../ledger/derived-id';
import { type Env, type Ledger, type Recorded, shopDay } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { findLine } from '../queries/jobs';
import { listConnections } from '../queries/tables';
import { checkFluidIssue } from './fluid-at-issue';
import { findToolId, unknownTool } from './tool-entry';

interface Item {
  readonly toolId: string;
  readonly role: Role;
}

/**
 * Issues a kit: every item to one person for one line, all or none. Each item is judged once more as it is at this
 * moment, so that two counters never both hand out the last die. The kit's ID is that of its entry.
 */
export function issueKit(
  db: Db,
  permit: Permit<'issue-tool'>,
  input: IssueKit,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId, deviceAtMs, reason, jobLineId, toPersonId, bench } = input;
  return write(db, permit, env, (ledger) => {
    const asked = { jobLineId, toPersonId, bench };
    const before = ledger.sentBefore(
      entryId,
      reason,
      (entry) =>
        entry.kind === 'kit-issued' &&
        holdsAll(entry.payload, asked) &&
        sameTools(entry.payload.items, input.toolIds),
    );
    if (before !== undefined) return before;
    if (ledger.find('person', toPersonId) === undefined)
      return refuse('unknown-person', 'Choose who it goes to.', 'toPersonId');
    const items = judgeItems(db, ledger, input, shopDay(env));
    if (!items.ok) return items;
    for (const [place, { toolId }] of items.value.entries()) {
      const shown = input.shown[toolId];
      const issued = ledger.record({
        id: derivedId(entryId, String(place)),
        ...{ subjectId: toolId, deviceAtMs, reason, kind: 'tool-issued' },
        payload: { ...asked, kitId: entryId, ...(shown === undefined ? {} : { shown }) },
      });
      if (!issued.ok) return issued;
    }
    const payload = { ...asked, items: items.value };
    return ledger.record({
      id: entryId,
      subjectId: entryId,
      deviceAtMs,
      reason,
      kind: 'kit-issued',
      payload,
    });
  });
}

/** Whether a kit holds the tools that were scanned, in their order; typed IDs read as they would be marked. */
function sameTools(items: readonly { readonly toolId: string }[], typed: readonly string[]): boolean {
  return (
    items.length === typed.length &&
    items.every(({ toolId }, at) => toolKey(toolId) === toolKey(typed[at] ?? ''))
  );
}

/** Every scanned item as it stands in this transaction, judged for the line; the first that stops refuses the kit. */
function judgeItems(db: Db, ledger: Ledger, input: IssueKit, today: string): Result<Item[], Refusal> {
  const line = findLine(db, input.jobLineId);
  if (line === undefined || line.jobStatus !== 'open')
    return refuse('unknown-line', `${input.jobLineId} is not a line of an open job.`, 'jobLineId');
  const connection = ledger.find('connection', line.connectionId);
  if (connection === undefined)
    return refuse(
      'unknown-connection',
      'The shop has no table row for the size of this line. Add it from the fitting maker’s manual first.',
    );
  const materialName = ledger.find('material', line.materialId)?.name ?? line.materialId;
  const roles = setNeeds(line.operations).map(({ role }) => role);
  const items: Item[] = [];
  for (const typed of input.toolIds) {
    const toolId = findToolId(db, typed);
    const tool = toolId === undefined ? undefined : ledger.find('tool', toolId);
    const part = tool === undefined ? undefined : ledger.find('part', tool.partId);
    if (tool === undefined || part === undefined) return unknownTool(typed, 'toolIds');
    const scannedIds = items.map((item) => item.toolId);
    const need = {
      today,
      line,
      connection,
      materialName,
      roles,
      scannedIds,
      connections: listConnections(db),
    };
    const scan = judgeItem(kitTool(ledger, tool), part, need);
    if (!scan.goes) return refuse(scan.code, scan.sentence, 'toolIds');
    const fluid = checkFluidIssue(db, ledger, { tool, jobLineId: line.id }, today);
    if (!fluid.ok) return fluid;
    items.push({ toolId: tool.id, role: tool.role });
  }
  return ok(items);
}

function kitTool(ledger: Ledger, tool: ToolRecord) {
  const holder = tool.holderId === null ? undefined : ledger.find('person', tool.holderId);
  const edge = currentEdge(tool);
  return { ...tool, holderName: holder?.name ?? null, edgeEnded: edge !== undefined && edge.end !== null };
}
