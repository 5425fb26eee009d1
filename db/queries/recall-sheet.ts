import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import type { DisposalRecord, RecallRecord } from '../../lib/ledger/recall-history';
import { type DisposalSum, sumDisposals } from '../../lib/recall/disposal-sum';
import { type FaultMeaning, faultMeaning } from '../../lib/recall/fault-meaning';
import type { Role } from '../../lib/shop/vocabulary';
import { compareText } from '../../lib/text/compare-text';
import type { Db } from '../open';
import { findAcceptances } from './acceptance';
import { findJob, findLine } from './jobs';
import { findRecall } from './recalls';
import { findTool } from './tools';

/** The ends of one look in a recall, with what is known of them. */
export interface SuspectRow extends DisposalSum {
  readonly acceptanceId: string;
  /** Undefined where the entry was taken back meanwhile. */
  readonly look: AcceptanceRecord | undefined;
  readonly jobId: string | null;
  /** The day its job left the house, as far as the recall saw it go; null: in house. */
  readonly shippedOnDay: string | null;
  readonly independentlyChecked: boolean;
  readonly disposals: readonly DisposalRecord[];
}

/** A recall as it is read and printed. */
export interface RecallSheet {
  readonly recall: RecallRecord;
  readonly role: Role;
  readonly meaning: FaultMeaning;
  readonly suspects: readonly SuspectRow[];
  readonly refused: readonly AcceptanceRecord[];
}

/** One recall with all of its ends, by job and heat; undefined where there is none of that ID. */
export function readRecallSheet(db: Db, recallId: string): RecallSheet | undefined {
  const recall = findRecall(db, recallId);
  if (recall === undefined) return undefined;
  const role = findTool(db, recall.gaugeId)?.role ?? 'go-ring';
  const ids = recall.suspects.map(({ acceptanceId }) => acceptanceId);
  const looks = findAcceptances(db, [...ids, ...recall.refusedIds]);
  const sums = sumDisposals(recall);
  const jobs = jobsOf(db, looks);
  const suspects = ids.map((id) => suspectRow(recall, id, { looks, sums, jobs }));
  suspects.sort(byJobAndHeat);
  return {
    ...{ recall, role, suspects },
    meaning: faultMeaning({ role, direction: recall.direction }),
    refused: recall.refusedIds.flatMap((id) => looks.get(id) ?? []),
  };
}

/** Gone after it was gauged; and, once the recall is closed, before that. */
function hadLeft(shippedOnDay: string | null, look: AcceptanceRecord, recall: RecallRecord): boolean {
  if (shippedOnDay === null || shippedOnDay < look.gaugedOnDay) return false;
  return recall.closedOnDay === null || shippedOnDay <= recall.closedOnDay;
}

interface JobOfEnds {
  readonly jobId: string;
  readonly shippedOnDay: string | null;
}

function suspectRow(
  recall: RecallRecord,
  acceptanceId: string,
  known: {
    looks: ReadonlyMap<string, AcceptanceRecord>;
    sums: ReadonlyMap<string, DisposalSum>;
    jobs: ReadonlyMap<string, JobOfEnds>;
  },
): SuspectRow {
  const look = known.looks.get(acceptanceId);
  const job = look?.jobLineId ? known.jobs.get(look.jobLineId) : undefined;
  const shipped = job?.shippedOnDay ?? null;
  return {
    ...(known.sums.get(acceptanceId) ?? { endCount: 0, open: 0, good: 0, gone: 0 }),
    ...{ acceptanceId, look, jobId: job?.jobId ?? null },
    shippedOnDay: look !== undefined && hadLeft(shipped, look, recall) ? shipped : null,
    independentlyChecked: look !== undefined && look.independentCheck !== 'no',
    disposals: recall.disposals.filter((one) => one.acceptanceId === acceptanceId),
  };
}

function jobsOf(db: Db, looks: ReadonlyMap<string, AcceptanceRecord>): Map<string, JobOfEnds> {
  const lineIds = new Set([...looks.values()].flatMap(({ jobLineId }) => jobLineId ?? []));
  const jobs = new Map<string, JobOfEnds>();
  for (const lineId of lineIds) {
    const jobId = findLine(db, lineId)?.jobId;
    if (jobId === undefined) continue;
    jobs.set(lineId, { jobId, shippedOnDay: findJob(db, jobId)?.shippedOnDay ?? null });
  }
  return jobs;
}

/** Shipped first: they are the furthest away. Then by job, heat and the moment of gauging. */
function byJobAndHeat(a: SuspectRow, b: SuspectRow): number {
  const key = (row: SuspectRow) =>
    [row.shippedOnDay === null ? '1' : '0', row.look?.jobLineId ?? '~', row.look?.heat ?? ''].join(' ');
  return compareText(key(a), key(b)) || (a.look?.gaugedAtMs ?? 0) - (b.look?.gaugedAtMs ?? 0);
}
