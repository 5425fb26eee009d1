import type { EdgeEnding } from '../../lib/import/edge-ending';
import type { CutRow } from '../../lib/import/read-cut-row';
import type { Draft } from '../../lib/ledger/event';
import { currentEdge } from '../../lib/ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { derivedId } from '../ledger/derived-id';
import { type EntryRow, standingEntries } from '../ledger/entry-row';
import type { ImportRun, Standing } from './import-run';

interface Ended {
  readonly ending: EdgeEnding;
  readonly entryId: string;
  readonly toolId: string;
  /** The record has the end of the edge already, and only its renewal is to be added. */
  readonly endKnown?: boolean;
}

/** Records how an edge ended after a row: out of service with its cause, or to regrind; and its renewal if it came back. */
export function importEnding(run: ImportRun, row: CutRow, ended: Ended): Result<Standing, Refusal> {
  const { ending, toolId } = ended;
  const isBlade = run.ledger.find('tool', toolId)?.role === 'blade';
  const toRegrind = ending.after === 'reground' || ending.after === 'regrind';
  if (toRegrind && !isBlade)
    return refuse('role', `${toolId} is not a blade; only blades are reground.`, 'edge_ended');
  for (const draft of draftsOf(run, row, ended)) {
    if (draft.kind === 'edge-renewed') {
      const refusal = regrindLimit(run, toolId);
      if (refusal !== undefined) return { ok: false, refusal };
    }
    const recorded = run.ledger.record(draft);
    if (!recorded.ok) return { ok: false, refusal: { ...recorded.refusal, field: 'edge_ended' } };
  }
  return ok('new');
}

function draftsOf(run: ImportRun, row: CutRow, { ending, entryId, toolId, endKnown }: Ended): Draft[] {
  const { cause, after } = ending;
  const about = { subjectId: toolId, deviceAtMs: run.env.nowMs, reason: 'from the imported cut log' };
  const drafts: Draft[] = [];
  if (endKnown !== true && cause !== null) {
    const to = after === 'reground' ? 'regrind' : after;
    drafts.push({ ...about, id: derivedId(entryId, 'ended'), kind: 'edge-ended', payload: { cause, to } });
  }
  if (endKnown !== true && cause === null)
    drafts.push({
      ...about,
      id: derivedId(entryId, 'out'),
      kind: 'tool-moved',
      payload: { to: 'regrind', backOnDay: null },
    });
  if (after === 'reground')
    drafts.push({
      ...about,
      id: derivedId(entryId, 'renewed'),
      kind: 'edge-renewed',
      payload: { onDay: row.cutOnDay },
    });
  return drafts;
}

/**
 * The same for a row that is in the record: nothing to do where the record has this ending after it; added where the
 * row is the last on its edge and the edge still serves; refused where the record went on otherwise.
 */
export function importKnownEnding(
  run: ImportRun,
  row: CutRow,
  { ending, seen, toolId }: { ending: EdgeEnding; seen: EntryRow; toolId: string },
): Result<Standing, Refusal> {
  const entries = standingEntries(run.db.$client, 'tool', toolId);
  const at = entries.findIndex((entry) => entry.id === seen.id);
  if (at < 0) return ok('already-there');
  const later = entries.slice(at + 1);
  const next = later.findIndex((entry) => entry.kind === 'cut-logged');
  const until = next < 0 ? later : later.slice(0, next);
  const end = until.find((entry) => entry.kind === 'edge-ended');
  const renewed = until.some((entry) => entry.kind === 'edge-renewed');
  const endAgrees = ending.cause === null ? renewed : end?.payload.cause === ending.cause;
  const backAgrees = ending.after !== 'reground' || renewed;
  if (endAgrees && backAgrees) return ok('already-there');
  if (next >= 0 || renewed || (end !== undefined && !endAgrees))
    return refuse(
      'ending',
      `The record of ${toolId} went on otherwise after this row. Mend it on the tool’s own page.`,
      'edge_ended',
    );
  return importEnding(run, row, { ending, entryId: seen.id, toolId, endKnown: end !== undefined });
}

function regrindLimit(run: ImportRun, toolId: string): Refusal | undefined {
  const tool = run.ledger.find('tool', toolId);
  const limit = tool && run.ledger.find('part', tool.partId)?.regrindLimit;
  if (tool === undefined || limit === undefined || (currentEdge(tool)?.edgeNo ?? 0) <= limit)
    return undefined;
  return refuse('limit', `${toolId} has reached its limit of ${limit} regrinds.`, 'edge_ended').refusal;
}
