import type { Permit } from '../../lib/access/permit';
import type { Draft, ENTRY, Entry, EntryKind } from '../../lib/ledger/event';
import type { Refusal, Result } from '../../lib/result';
import { ok, refuse } from '../../lib/result';
import { tidyToolId, toolKey } from '../../lib/shop/tool-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';

/** What every command about one tool carries. */
export interface AboutTool {
  readonly entryId: string;
  readonly deviceAtMs: number;
  readonly reason: string;
  readonly toolId: string;
}

type ToolKind = { [K in EntryKind]: (typeof ENTRY)[K]['subject'] extends 'tool' ? K : never }[EntryKind];
type ToolDraft = Extract<Draft, { kind: ToolKind }>;
type Content = ToolDraft extends infer D
  ? D extends { kind: infer K; payload: infer P }
    ? { kind: K; payload: P }
    : never
  : never;

/** The marked ID under which a typed or scanned one is known, look-alike characters folded; undefined if it is not. */
export function findToolId(db: Db, typed: string): string | undefined {
  const row = statement(db.$client, 'SELECT id FROM tool WHERE look_up_key = ?').get(toolKey(typed)) as
    | { id: string }
    | undefined;
  return row?.id;
}

/** The bottle of fluid that a row names, as it stands in the record; undefined where it names none or an unknown one. */
export function findFluid(db: Db, ledger: Ledger, typed: string | null) {
  const id = typed === null ? undefined : findToolId(db, typed);
  return id === undefined ? undefined : ledger.find('tool', id);
}

/** The draft of an entry about a tool, from what the device sent. */
export function toolDraft(about: AboutTool, toolId: string, content: Content): Draft {
  const { entryId: id, deviceAtMs, reason } = about;
  return { id, subjectId: toolId, deviceAtMs, reason, ...content } as Draft;
}

/**
 * Records one entry about a tool that is in the record. Most tool commands are exactly this. An entry sent before is
 * answered before anything is decided; `check` may refuse a new one for a reason that lies outside the tool's history.
 */
export function recordToolEntry(
  db: Db,
  permit: Permit,
  about: AboutTool,
  env: Env,
  content: Content,
  check?: (ledger: Ledger, toolId: string) => Result<unknown, Refusal>,
): Result<Recorded, Refusal> {
  const isSame = (entry: Entry) => entry.kind === content.kind && holdsAll(entry.payload, content.payload);
  return decideToolEntry(db, permit, about, env, isSame, (ledger, toolId) => {
    const checked = check?.(ledger, toolId) ?? ok(null);
    return checked.ok ? ok(content) : checked;
  });
}

/** The same where the content is worked out from the shop's tables; `isSame` knows an entry that was sent before. */
export function decideToolEntry(
  db: Db,
  permit: Permit,
  about: AboutTool,
  env: Env,
  isSame: (entry: Entry) => boolean,
  contentOf: (ledger: Ledger, toolId: string) => Result<Content, Refusal>,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(
      about.entryId,
      about.reason,
      (entry) => toolKey(entry.subjectId) === toolKey(about.toolId) && isSame(entry),
    );
    if (before !== undefined) return before;
    const toolId = findToolId(db, about.toolId);
    if (toolId === undefined) return unknownTool(about.toolId);
    const content = contentOf(ledger, toolId);
    return content.ok ? ledger.record(toolDraft(about, toolId, content.value)) : content;
  });
}

/** The refusal for an ID that no tool bears. */
export function unknownTool(typed: string, field = 'toolId') {
  return refuse(
    'unknown-tool',
    `No tool ${tidyToolId(typed)} is in the record. Check the mark, or receive it first.`,
    field,
  );
}
