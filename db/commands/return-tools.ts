import type { Permit } from '../../lib/access/permit';
import type { Draft } from '../../lib/ledger/event';
import type { Refusal, Result } from '../../lib/result';
import type { ReturnTools } from '../../lib/shop/kit-input';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { findToolId, toolDraft, unknownTool } from './tool-entry';

/**
 * Takes several tools back at once, each looked at and in order: all or none. The first entry bears the ID that the device
 * made, the others are numbered from it. Gives what was recorded of the first.
 */
export function returnTools(
  db: Db,
  permit: Permit<'return-tool'>,
  input: ReturnTools,
  env: Env,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => {
    const drafts: Draft[] = [];
    for (const [place, typed] of input.toolIds.entries()) {
      const toolId = findToolId(db, typed);
      if (toolId === undefined) return unknownTool(typed, 'toolIds');
      const about = { ...input, toolId, entryId: idAt(input.entryId, place) };
      drafts.push(toolDraft(about, toolId, { kind: 'tool-returned', payload: { condition: 'ok' } }));
    }
    const otherList = sentWithOthers(ledger, input, drafts);
    if (otherList !== undefined) return otherList;
    let first: Result<Recorded, Refusal> | undefined;
    for (const draft of drafts) {
      const recorded = ledger.record(draft);
      if (!recorded.ok) return recorded;
      first ??= recorded;
    }
    return first ?? unknownTool('', 'toolIds');
  });
}

function idAt(entryId: string, place: number): string {
  return place === 0 ? entryId : derivedId(entryId, String(place));
}

/** The refusal where the same ID came before with a longer or a shorter list. */
function sentWithOthers(
  ledger: Ledger,
  { entryId, reason, toolIds }: ReturnTools,
  drafts: readonly Draft[],
): Result<Recorded, Refusal> | undefined {
  const isSent = (id: string) => ledger.sentBefore(id, reason, () => false);
  if (isSent(entryId) === undefined) return undefined;
  const isShorter = isSent(idAt(entryId, toolIds.length)) !== undefined;
  const isLonger = drafts.some(({ id }) => isSent(id) === undefined);
  return isShorter || isLonger ? isSent(entryId) : undefined;
}
