import { asc, eq } from 'drizzle-orm';
import type { ImportKind } from '../../lib/import/column';
import { COLUMNS } from '../../lib/import/columns';
import { csvText } from '../../lib/import/csv-text';
import { cutCells, jobCells, toolCells } from '../../lib/import/export-cells';
import { readConnectionKey } from '../../lib/shop/connection-text';
import type { Cut } from '../../lib/shop/cut';
import type { Connection } from '../../lib/shop/noun';
import { OPERATIONS } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { job, jobLine, tool } from '../schema';
import { readEdgeEndings } from './edge-endings';
import { listConnections, listParts } from './tables';

/**
 * All tools, the whole cut log or all jobs as a CSV file in the columns that are imported. Importing it again changes
 * nothing.
 */
export function exportCsv(db: Db, kind: ImportKind): string {
  const keys = COLUMNS[kind].map((column) => column.key);
  const connections = new Map(listConnections(db).map((connection) => [connection.id, connection]));
  const rows = { tools: toolRows, cuts: cutRows, jobs: jobRows }[kind](db, connections);
  return csvText(
    keys,
    rows.map((cells) => keys.map((key) => cells[key] ?? '')),
  );
}

type Connections = ReadonlyMap<string, Connection>;
type CellsByColumn = Readonly<Record<string, string>>;

function toolRows(db: Db, connections: Connections): CellsByColumn[] {
  const parts = new Map(listParts(db).map((part) => [part.id, part]));
  const rows = db.select().from(tool).orderBy(asc(tool.id)).all();
  return rows.map((row) => toolCells({ tool: row, part: parts.get(row.partId), connections }));
}

interface LoggedRow {
  readonly entryId: string;
  readonly toolId: string;
  readonly payload: string;
  readonly reason: string;
  readonly batchId: string | null;
  readonly personName: string | null;
  readonly reversed: 0 | 1;
}

const CUT_LOG = `SELECT c.entry_id AS entryId, c.tool_id AS toolId, e.payload, e.reason, e.batch_id AS batchId,
    p.name AS personName, c.reversed
  FROM cut c JOIN entry e ON e.id = c.entry_id LEFT JOIN person p ON p.id = e.actor_id ORDER BY c.seq`;

function cutRows(db: Db, connections: Connections): CellsByColumn[] {
  const endings = readEdgeEndings(db);
  return (statement(db.$client, CUT_LOG).all() as LoggedRow[]).map((row) => {
    const cut = JSON.parse(row.payload) as Cut;
    const connection = connections.get(cut.connectionId);
    const ending = endings.get(row.entryId) ?? null;
    const { entryId, toolId } = row;
    return cutCells({
      entryId,
      toolId,
      cut,
      connection,
      by: cutBy(row),
      ending,
      reversed: row.reversed === 1,
    });
  });
}

/** Who cut: in an imported row the one named in the note, not the one who imported it. */
function cutBy({ batchId, reason, personName }: LoggedRow): string {
  return batchId === null ? (personName ?? '') : (/^by (.+)$/.exec(reason)?.[1] ?? '');
}

function jobRows(db: Db, connections: Connections): CellsByColumn[] {
  const rows = db
    .select()
    .from(jobLine)
    .innerJoin(job, eq(job.id, jobLine.jobId))
    .orderBy(asc(jobLine.jobId), asc(jobLine.lineNo))
    .all();
  return rows.map(({ job: ofJob, job_line: line }) => {
    const size = connections.get(line.connectionId) ?? readConnectionKey(line.connectionId);
    const operations = OPERATIONS.filter((operation) => line[operation]);
    return jobCells(ofJob, { ...line, operations }, size);
  });
}
