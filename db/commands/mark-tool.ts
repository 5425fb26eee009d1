import type { Permit } from '../../lib/access/permit';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { MarkTool } from '../../lib/shop/mark-input';
import { tidyToolId, toolKey } from '../../lib/shop/tool-id';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/** Writes down that a tool was marked again. A mark that was read back as another tool's is refused: it sits on the wrong one. */
export function markTool(
  db: Db,
  permit: Permit<'mark-tool'>,
  input: MarkTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { how, codeKind, readAs, onDay } = input;
  const payload = { how, codeKind, readBack: readAs !== '', onDay };
  return recordToolEntry(db, permit, input, env, { kind: 'tool-marked', payload }, (_ledger, toolId) =>
    readAs === '' || toolKey(readAs) === toolKey(toolId)
      ? ok(null)
      : refuse(
          'read-back',
          `The mark reads ${tidyToolId(readAs)}, and this is ${toolId}. Check which tool is in your hand before anything else.`,
          'readAs',
        ),
  );
}
