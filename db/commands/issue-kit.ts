import type { Permit } from '../../lib/access/permit';
import { judgeItem } from '../../lib/kit/judge-item';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { IssueKit } from '../../lib/shop/kit-input';
import { toolKey } from '../../lib/shop/tool-id';
import type { Role } from '../../lib/shop/vocabulary';
import { derivedId } from '../ledger/derived-id';
import { type Env, type Recorded, shopDay } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { findLine } from '../queries/jobs';
import { readKitNeed } from '../queries/kit-need';
import { findKitStock } from '../queries/kit-stock';
import { unknownTool } from './tool-entry';

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
    const items = judgeItems(db, input, shopDay(env));
    if (!items.ok) return items;
    for (const [place, { toolId }] of items.value.entries()) {
      const shown = input.shown[toolId];
      const issued = ledger.record({
        id: derivedId(entryId, String(place)),
        ...{ subjectId: toolId, deviceAtMs, reason, kind: 'tool-issued' },
        payload: { ...asked, kitId: entryId, ...(shown === undefined ? {} : { shown }), onDay: shopDay(env) },
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
function judgeItems(db: Db, input: IssueKit, today: string): Result<Item[], Refusal> {
  const line = findLine(db, input.jobLineId);
  if (line === undefined || line.jobStatus !== 'open')
    return refuse('unknown-line', `${input.jobLineId} is not a line of an open job.`, 'jobLineId');
  const need = readKitNeed(db, line, today);
  if (need === undefined)
    return refuse(
      'unknown-connection',
      'The shop has no table row for the size of this line. Add it from the fitting maker’s manual first.',
    );
  const items: Item[] = [];
  const stock = findKitStock(db, input.toolIds);
  for (const [at, found] of stock.entries()) {
    if (found === undefined) return unknownTool(input.toolIds[at] ?? '', 'toolIds');
    const scannedIds = items.map(({ toolId }) => toolId);
    const scan = judgeItem(found.tool, found.part, { ...need, scannedIds });
    if (!scan.goes) return refuse(scan.code, scan.sentence, 'toolIds');
    items.push({ toolId: scan.toolId, role: scan.role });
  }
  return ok(items);
}
