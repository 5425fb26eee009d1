import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import type { IssueTool, ReturnTool } from '../../lib/shop/command-input';
import { type Env, type Ledger, type Recorded, shopDay } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import type { Db } from '../open';
import { checkFluidIssue } from './fluid-at-issue';
import { decideToolEntry, recordToolEntry } from './tool-entry';

/** Issues a tool to a person, for a job line or on loan. Two tablets never both get it: the second is told who has it. */
export function issueTool(
  db: Db,
  permit: Permit<'issue-tool'>,
  input: IssueTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { toPersonId, jobLineId, bench, shown } = input;
  const asked = { toPersonId, jobLineId, bench };
  // What was shown is worked out anew at every sending, so it does not tell one issue from another.
  const isSame = (entry: Entry) => entry.kind === 'tool-issued' && holdsAll(entry.payload, asked);
  return decideToolEntry(db, permit, input, env, isSame, (ledger, toolId) => {
    const tool = ledger.find('tool', toolId);
    if (tool?.state === 'issued') return refuse('state', whoHasIt(ledger, tool), 'toolId');
    if (ledger.find('person', toPersonId) === undefined) {
      return refuse('unknown-person', 'Choose who it goes to.', 'toPersonId');
    }
    const onDay = shopDay(env);
    const fluid = checkFluidIssue(db, { tool, jobLineId }, onDay);
    if (!fluid.ok) return fluid;
    const said = shown === undefined ? {} : { shown };
    return ok({ kind: 'tool-issued', payload: { ...asked, ...said, onDay } });
  });
}

/** Takes a tool back, with the condition it came back in; anything but "ok" goes to quarantine for a look. */
export function returnTool(
  db: Db,
  permit: Permit<'return-tool'>,
  input: ReturnTool,
  env: Env,
): Result<Recorded, Refusal> {
  const { condition, pieces } = input;
  const payload = pieces === undefined ? { condition } : { condition, pieces };
  return recordToolEntry(db, permit, input, env, { kind: 'tool-returned', payload });
}

/** "D-56-02 is with Robin Vale at bench 4, for J-086.2; it must come back before it can be issued again." */
function whoHasIt(ledger: Ledger, tool: ToolRecord): string {
  const name = (tool.holderId && ledger.find('person', tool.holderId)?.name) ?? 'somebody';
  const at = tool.bench === '' ? '' : ` at bench ${tool.bench}`;
  const job = tool.jobLineId === null ? '' : `, for ${tool.jobLineId}`;
  return `${tool.id} is with ${name}${at}${job}; it must come back before it can be issued again.`;
}
