import { foldWord } from '../../lib/import/column';
import type { CutRow } from '../../lib/import/read-cut-row';
import type { Identified } from '../../lib/import/read-rows';
import { type CutFactsOfRow, resolveCut, saysTheSame } from '../../lib/import/resolve-cut';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Cut } from '../../lib/shop/cut';
import { toolKey } from '../../lib/shop/tool-id';
import { decideCut } from '../../lib/wear/decide-cut';
import { type EntryRow, findEntryRow } from '../ledger/entry-row';
import { importEnding, importKnownEnding } from './import-ending';
import { jobLineFinder } from './import-job-line';
import type { ImportRun, Standing } from './import-run';
import { unknownTool } from './tool-entry';

/** How far a file's day may lie ahead of the server's clock: noon UTC of today is still ahead of a morning in the west. */
const AHEAD_MS_MAX = 26 * 3_600_000;

/** Logs the cuts of a file in the order of their days, and within a day in the order of the rows. */
export function importCuts(run: ImportRun, rows: readonly Identified<CutRow>[]): void {
  const jobLineOf = jobLineFinder(run.db);
  const byDay = rows.toSorted(({ row: a }, { row: b }) =>
    a.cutOnDay < b.cutOnDay ? -1 : a.cutOnDay > b.cutOnDay ? 1 : 0,
  );
  for (const { row, entryId } of byDay) {
    const done = row.reversed ? ok('left-out' as const) : importCut(run, row, entryId, jobLineOf);
    if (done.ok) run.settle(row.rowNo, done.value);
    else run.refuse(row.rowNo, done.refusal, 'tool_id');
  }
}

type JobLineOf = ReturnType<typeof jobLineFinder>;

function importCut(
  run: ImportRun,
  row: CutRow,
  entryId: string,
  jobLineOf: JobLineOf,
): Result<Standing, Refusal> {
  const toolId = run.toolIds.get(toolKey(row.toolId));
  if (toolId === undefined) return unknownTool(row.toolId);
  const facts = resolveCut(run.index, row, jobLineOf);
  const seen = findEntryRow(run.db.$client, entryId);
  if (seen !== undefined) return known(run, row, { seen, toolId, facts });
  if (!facts.ok) return facts;
  if (facts.value.cutAtMs > run.env.nowMs + AHEAD_MS_MAX)
    return refuse('future', `${row.cutOnDay} lies in the future.`, 'cut_on');
  const logged = log(run, row, { entryId, toolId, facts: facts.value });
  return logged.ok && row.ending !== null
    ? importEnding(run, row, { ending: row.ending, entryId, toolId })
    : logged;
}

function log(
  run: ImportRun,
  row: CutRow,
  { entryId, toolId, facts }: { entryId: string; toolId: string; facts: CutFactsOfRow },
): Result<Standing, Refusal> {
  const { ledger, env } = run;
  const tool = ledger.find('tool', toolId);
  const decision = decideCut({
    input: facts,
    cutAtMs: facts.cutAtMs,
    tool,
    part: tool && ledger.find('part', tool.partId),
    connection: ledger.find('connection', facts.connectionId),
    material: ledger.find('material', facts.materialId),
    fluid: ledger.find('tool', run.toolIds.get(toolKey(facts.fluidId ?? '')) ?? ''),
  });
  if (!decision.ok) return decision;
  const recorded = ledger.record({
    id: entryId,
    kind: 'cut-logged',
    subjectId: toolId,
    deviceAtMs: env.nowMs,
    reason: reasonOf(run, row),
    payload: decision.value,
  });
  return recorded.ok ? ok('new') : recorded;
}

/** A row whose entry is in the record: it must say the same; how its edge ended may have been written in since. */
function known(
  run: ImportRun,
  row: CutRow,
  { seen, toolId, facts }: { seen: EntryRow; toolId: string; facts: Result<CutFactsOfRow, Refusal> },
): Result<Standing, Refusal> {
  const sameTool = seen.kind === 'cut-logged' && seen.subject_id === toolId;
  if (!sameTool)
    return refuse('id-reused', `The ID ${seen.id} belongs to another entry in the record.`, 'entry_id');
  if (row.entryId !== null) {
    if (!facts.ok) return facts;
    if (!saysTheSame(JSON.parse(seen.payload) as Cut, facts.value, row))
      return refuse(
        'differs',
        `Entry ${seen.id} is in the record with other content. Take it back there and log it again; a file does not change entries.`,
        'entry_id',
      );
  }
  return row.ending === null
    ? ok('already-there')
    : importKnownEnding(run, row, { ending: row.ending, seen, toolId });
}

/** The importer is on record as the actor; whom the file names stands in the note. */
function reasonOf(run: ImportRun, { by }: CutRow): string {
  return by === '' ? '' : `by ${run.index.peopleNamed.get(foldWord(by))?.name ?? by}`;
}
