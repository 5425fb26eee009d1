import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import {
  type Certificate,
  type EndTrace,
  isAboutEnd,
  sameMark,
  type TracedRecall,
  type TracedTools,
  traceLook,
} from '../../lib/trace/end-trace';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { findAcceptance, listAcceptances } from './acceptance';
import { listEvidence } from './gauges';
import { findJob, findLine } from './jobs';
import { findRecall } from './recalls';
import { findTool } from './tools';

/** How an end is asked for: by its line and number, or by the mark that it bears. */
export type EndAsked =
  | { readonly jobLineId: string; readonly endNo: number }
  | { readonly mark: string; readonly jobLineId?: string }
  /** One of the ends of a look that bear neither mark nor number. */
  | { readonly acceptanceId: string };

/**
 * Everything known of one end: who, when, blade and die with what they had cut by then, gauges with the certificates valid
 * that day, heat, fluid lot, refusals on its line, recalls. Undefined where nobody accepted such an end.
 */
export function traceEnd(db: Db, asked: EndAsked): EndTrace | undefined {
  const first = findFirst(db, asked);
  if (first === undefined) return undefined;
  const line = first.jobLineId === null ? undefined : findLine(db, first.jobLineId);
  const ofLine = first.jobLineId === null ? [first] : listAcceptances(db, first.jobLineId);
  const again = ofLine.filter(({ regaugesId }) => regaugesId === first.id);
  const tools = tracedTools(db);
  const endNo = endNoOf(first, asked);
  return {
    jobId: line?.jobId ?? null,
    jobLineId: first.jobLineId,
    ...{ endNo, mark: markOf(first, asked, endNo) },
    ...{ connectionId: first.connectionId, materialId: first.materialId, heat: first.heat },
    operations: first.operations,
    shippedOnDay: (line && findJob(db, line.jobId)?.shippedOnDay) ?? null,
    looks: [first, ...again].map((look) => traceLook(look, tools)),
    refusedBefore: ofLine.flatMap(({ id, endCount, cause, gaugedAtMs }) =>
      cause === null || gaugedAtMs > first.gaugedAtMs ? [] : [{ acceptanceId: id, endCount, cause }],
    ),
    recalls: recallsOf(db, [first, ...again]),
  };
}

function findFirst(db: Db, asked: EndAsked): AcceptanceRecord | undefined {
  if ('acceptanceId' in asked) {
    const look = findAcceptance(db, asked.acceptanceId);
    return look?.regaugesId ? (findAcceptance(db, look.regaugesId) ?? look) : look;
  }
  return 'mark' in asked ? findByMark(db, asked) : findByNumber(db, asked);
}

/** Its number on the line; null where it bears none, or where one of several is meant and nobody knows which. */
function endNoOf(look: AcceptanceRecord, asked: EndAsked): number | null {
  if ('mark' in asked) return numberOfMark(look, asked.mark);
  if ('endNo' in asked) return asked.endNo;
  return look.endCount === 1 ? look.firstEndNo : null;
}

function findByNumber(
  db: Db,
  { jobLineId, endNo }: { jobLineId: string; endNo: number },
): AcceptanceRecord | undefined {
  return listAcceptances(db, jobLineId).find((look) => isAboutEnd(look, { endNo }));
}

function findByMark(
  db: Db,
  { mark, jobLineId }: { mark: string; jobLineId?: string },
): AcceptanceRecord | undefined {
  const rows = statement(
    db.$client,
    `SELECT DISTINCT m.acceptance_id AS id, a.gauged_at_ms FROM acceptance_mark m
     JOIN acceptance a ON a.id = m.acceptance_id WHERE m.mark LIKE ? ESCAPE '!' ORDER BY a.gauged_at_ms DESC`,
  ).all(looseMark(mark)) as { id: string }[];
  return rows
    .flatMap(({ id }) => findAcceptance(db, id) ?? [])
    .find((look) => isAboutEnd(look, { mark }) && (jobLineId === undefined || look.jobLineId === jobLineId));
}

/** The mark with any run of spaces matching any other; `isAboutEnd` decides. LIKE ignores the case of Latin letters. */
function looseMark(mark: string): string {
  const words = mark.split(/\s+/).filter(Boolean);
  return words.map((word) => word.replace(/[!%_]/g, '!$&')).join('%');
}

function numberOfMark({ firstEndNo, endMarks }: AcceptanceRecord, mark: string): number | null {
  const at = endMarks.findIndex((one) => sameMark(one, mark));
  return firstEndNo === null || at < 0 ? null : firstEndNo + at;
}

function markOf(look: AcceptanceRecord, asked: EndAsked, endNo: number | null): string | null {
  if ('mark' in asked) return look.endMarks.find((one) => sameMark(one, asked.mark)) ?? asked.mark;
  return endNo === null || look.firstEndNo === null ? null : (look.endMarks[endNo - look.firstEndNo] ?? null);
}

function tracedTools(db: Db): TracedTools {
  return {
    lotOf: (toolId) => findTool(db, toolId)?.lot ?? '',
    calibrations: (toolId) =>
      listEvidence(db, toolId).flatMap(({ calibration, file }): Certificate[] =>
        calibration === null
          ? []
          : [
              {
                number: calibration.certificate,
                laboratory: calibration.laboratory ?? '',
                ...{ onDay: calibration.onDay, dueOnDay: calibration.dueOnDay, result: calibration.result },
                file: file === null ? null : { sha256: file.sha256, name: file.name },
              },
            ],
      ),
  };
}

function recallsOf(db: Db, looks: readonly AcceptanceRecord[]): TracedRecall[] {
  const ids = statement(
    db.$client,
    'SELECT DISTINCT recall_id AS id FROM recall_suspect WHERE acceptance_id = ? ORDER BY recall_id',
  );
  return looks.flatMap((look) =>
    (ids.all(look.id) as { id: string }[]).flatMap(({ id }) => {
      const recall = findRecall(db, id);
      if (recall === undefined) return [];
      const hows = recall.disposals.filter((one) => one.acceptanceId === look.id).map(({ how }) => how);
      return [{ recallId: id, gaugeId: recall.gaugeId, status: recall.status, hows: [...new Set(hows)] }];
    }),
  );
}
