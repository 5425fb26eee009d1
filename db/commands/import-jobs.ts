import { groupJobs, type JobGroup } from '../../lib/import/group-jobs';
import type { JobRow } from '../../lib/import/read-job-row';
import { makeRowIds } from '../../lib/import/row-id';
import type { JobRecord } from '../../lib/ledger/job-history';
import { type Refusal, type Result, refuse } from '../../lib/result';
import { type Job, type JobLine, JobSchema } from '../../lib/shop/job';
import { derivedId } from '../ledger/derived-id';
import { statement } from '../ledger/statements';
import type { ImportRun } from './import-run';

/** Enters the jobs of a file, each as a whole; a job that the record has in the same words is left alone. */
export function importJobs(run: ImportRun, rows: readonly JobRow[], complete: boolean): void {
  const idOf = makeRowIds('jobs');
  for (const group of groupJobs(run.index, rows)) {
    for (const { rowNo, key, sentence } of group.faults) run.fault(rowNo, key, sentence);
    if (group.faults.length > 0) continue;
    run.remarks.push(...group.remarks);
    importJob(run, group, { idOf, complete });
  }
}

function importJob(
  run: ImportRun,
  group: JobGroup,
  { idOf, complete }: { idOf: (content: string) => string; complete: boolean },
): void {
  const before = run.ledger.find('job', group.job.id);
  const job = { ...group.job, title: group.job.title === '' ? (before?.title ?? '') : group.job.title };
  const [firstRow = 0] = group.rowNos;
  const unchanged = unchangedLines(job, before);
  const same =
    before !== undefined && unchanged.size === before.lines.length && job.lines.length === unchanged.size;
  if (same && before.title === job.title) {
    for (const rowNo of group.rowNos) run.settle(rowNo, 'already-there');
    return;
  }
  const set = recordJob(run, { ...group, job }, idOf(JSON.stringify([job, lastEntryId(run, job.id)])));
  if (!set.ok) {
    run.refuse(firstRow, set.refusal, 'job');
    return;
  }
  if (before !== undefined && complete) remarkChanges(run, group, before);
  // A job whose title alone changed, or that only lost lines, still shows as one new row.
  const anyNew = job.lines.some((line) => !unchanged.has(line.lineNo));
  for (const [at, rowNo] of group.rowNos.entries()) {
    const kept = unchanged.has(group.lineNos[at] ?? 0) && (anyNew || at > 0);
    run.settle(rowNo, kept ? 'already-there' : 'new');
  }
}

function recordJob(run: ImportRun, { job, status }: JobGroup, id: string): Result<unknown, Refusal> {
  const parsed = JobSchema.safeParse(job);
  if (!parsed.success) return refuse('job', parsed.error.issues[0]?.message ?? 'This job cannot be entered.');
  const isNew = run.ledger.find('job', job.id) === undefined;
  const about = { subjectId: job.id, deviceAtMs: run.env.nowMs, reason: 'from an imported file' };
  const set = run.ledger.record({ ...about, id, kind: 'job-set', payload: parsed.data });
  if (!set.ok || !isNew || status === 'open') return set;
  return run.ledger.record({
    ...about,
    id: derivedId(id, 'closed'),
    kind: 'job-closed',
    payload: { how: status },
  });
}

/** The line numbers that the record has in the same words. */
function unchangedLines(job: Job, before: JobRecord | undefined): ReadonlySet<number> {
  const kept = new Map((before?.lines ?? []).map((line) => [line.lineNo, lineText(line)]));
  const same = job.lines.filter((line) => kept.get(line.lineNo) === lineText(line));
  return new Set(same.map((line) => line.lineNo));
}

function lineText(line: JobLine): string {
  const { lineNo, connectionId, materialId, heat, ends, operations, startOnDay, dueOnDay, value } = line;
  return JSON.stringify([
    lineNo,
    connectionId,
    materialId,
    heat,
    ends,
    operations.toSorted(),
    startOnDay,
    dueOnDay,
    value,
  ]);
}

/**
 * The last entry about a job goes into the ID of the next: setting a job back to an earlier plan is then a new entry,
 * while the same file twice in a row changes nothing.
 */
function lastEntryId(run: ImportRun, jobId: string): string | null {
  const sql = `SELECT id FROM entry WHERE subject_kind = 'job' AND subject_id = ? ORDER BY seq DESC LIMIT 1`;
  const row = statement(run.db.$client, sql).get(jobId) as { id: string } | undefined;
  return row?.id ?? null;
}

function remarkChanges(run: ImportRun, group: JobGroup, before: JobRecord): void {
  const [rowNo = 0] = group.rowNos;
  const lines = new Set(group.job.lines.map((line) => line.lineNo));
  const dropped = before.lines.filter((line) => !lines.has(line.lineNo)).map((line) => line.lineNo);
  if (dropped.length > 0)
    run.remarks.push({
      rowNo,
      sentence: `Job ${before.id} has line ${dropped.join(', ')} in the record and not in this file; it will be dropped.`,
    });
  if (before.status !== 'open')
    run.remarks.push({
      rowNo,
      sentence: `Job ${before.id} is ${before.status} in the record; this file opens it again.`,
    });
}
