import { typedEnd } from '../../lib/trace/typed-end';
import { statement } from '../ledger/statements';
import type { Db } from '../open';
import { findTool } from './tools';

/** Ends that a search led to: those of one look, or the one whose mark or number was asked for. */
export interface EndHit {
  readonly acceptanceId: string;
  readonly found: 'mark' | 'number' | 'line' | 'heat' | 'gauge' | 'edge' | 'fluid';
  readonly jobLineId: string | null;
  /** The one end, where the search led to one; else the first of them, or null where they bear no number. */
  readonly endNo: number | null;
  readonly mark: string | null;
  readonly endCount: number;
  readonly connectionId: string;
  readonly heat: string;
  readonly gaugedOnDay: string;
  readonly decision: 'accepted' | 'refused';
}

/** What was found, the latest first, and how many looks more there are than are listed. */
export interface FoundEnds {
  readonly hits: readonly EndHit[];
  readonly more: number;
}

const FIELDS = `a.id AS acceptanceId, a.job_line_id AS jobLineId, a.connection_id AS connectionId, a.heat,
    a.gauged_on_day AS gaugedOnDay, a.decision`;
const LATEST = 'ORDER BY a.gauged_at_ms DESC, a.id';
const WHOLE_LOOK = `${FIELDS}, a.first_end_no AS endNo, a.end_count AS endCount, NULL AS mark FROM acceptance a`;

const BY_MARK = `SELECT ${FIELDS}, a.first_end_no + m.position - 1 AS endNo, 1 AS endCount, m.mark
  FROM acceptance_mark m JOIN acceptance a ON a.id = m.acceptance_id
  WHERE m.mark LIKE ? ESCAPE '!' AND a.regauges_id IS NULL ${LATEST}, m.position`;
const BY_NUMBER = `SELECT ${FIELDS}, ? AS endNo, 1 AS endCount, NULL AS mark FROM acceptance a
  WHERE a.job_line_id = ? AND a.decision = 'accepted' AND a.regauges_id IS NULL
    AND ? BETWEEN a.first_end_no AND a.first_end_no + a.end_count - 1 ${LATEST}`;
const BY_LINE = `SELECT ${WHOLE_LOOK} WHERE (a.job_line_id = ? OR a.job_line_id LIKE ? ESCAPE '!') ${LATEST}`;
const BY_HEAT = `SELECT ${WHOLE_LOOK} WHERE a.heat <> '' AND a.heat = ? COLLATE NOCASE ${LATEST}`;
const BY_GAUGE = `SELECT ${WHOLE_LOOK} WHERE a.id IN
    (SELECT acceptance_id FROM acceptance_gauge WHERE tool_id = ? AND verdict <> 'not-used') ${LATEST}`;
const BY_EDGE = `SELECT ${WHOLE_LOOK} WHERE ? IN (a.data ->> 'dieId', a.data ->> 'bladeId') ${LATEST}`;
const BY_FLUID = `SELECT ${WHOLE_LOOK} WHERE a.data ->> 'fluidId' = ? ${LATEST}`;

/**
 * One search for ends: by a mark or the beginning of one, by job line and number, by job or line, by heat, or by the tool that
 * gauged or cut them. The first of these that leads anywhere is the answer.
 */
export function findEnds(db: Db, typed: string, limit = 60): FoundEnds {
  const asked = typed.normalize('NFKC').trim().replace(/\s+/g, ' ');
  if (asked === '') return { hits: [], more: 0 };
  for (const search of SEARCHES) {
    const hits = search(db, asked);
    if (hits.length > 0) return { hits: hits.slice(0, limit), more: Math.max(0, hits.length - limit) };
  }
  return { hits: [], more: 0 };
}

type Search = (db: Db, asked: string) => EndHit[];

const SEARCHES: readonly Search[] = [byMark, byNumber, byLine, byHeat, byTool];

/** The whole mark where there is one such; else every mark that begins with it, at a break between words. */
function byMark(db: Db, asked: string): EndHit[] {
  const pattern = asked.split(' ').map(likeText).join('%');
  const exact = query(db, 'mark', BY_MARK, [pattern]).filter(({ mark }) => plain(mark) === plain(asked));
  if (exact.length > 0) return exact;
  return query(db, 'mark', BY_MARK, [`${pattern}%`]).filter(({ mark }) =>
    plain(mark).startsWith(`${plain(asked)} `),
  );
}

function byNumber(db: Db, asked: string): EndHit[] {
  const end = typedEnd(asked);
  return end === undefined ? [] : query(db, 'number', BY_NUMBER, [end.endNo, end.jobLineId, end.endNo]);
}

function byLine(db: Db, asked: string): EndHit[] {
  const id = asked.toUpperCase();
  return query(db, 'line', BY_LINE, [id, `${likeText(id)}.%`]);
}

function byHeat(db: Db, asked: string): EndHit[] {
  return query(db, 'heat', BY_HEAT, [asked]);
}

function byTool(db: Db, asked: string): EndHit[] {
  const tool = findTool(db, asked);
  if (tool === undefined) return [];
  if (tool.role === 'die' || tool.role === 'blade') return query(db, 'edge', BY_EDGE, [tool.id]);
  return tool.role === 'fluid'
    ? query(db, 'fluid', BY_FLUID, [tool.id])
    : query(db, 'gauge', BY_GAUGE, [tool.id]);
}

function query(db: Db, found: EndHit['found'], sql: string, values: readonly (string | number)[]): EndHit[] {
  const rows = statement(db.$client, sql).all(...values) as Omit<EndHit, 'found'>[];
  return rows.map((row) => ({ ...row, found }));
}

/** Text as LIKE takes it literally. */
function likeText(text: string): string {
  return text.replace(/[!%_]/g, '!$&');
}

function plain(mark: string | null): string {
  return (mark ?? '').toLowerCase().split(/\s+/).filter(Boolean).join(' ');
}
