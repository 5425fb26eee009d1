import { and, asc, eq, inArray } from 'drizzle-orm';
import type { Db } from '../open';
import { cut, kit, tool } from '../schema';

/** A tool that something broke off, and which has not all been found: still searched for, or given up. */
export interface PiecesMissing {
  readonly toolId: string;
  readonly pieces: 'owed' | 'not-found';
}

/** Tools whose pieces are still searched for. */
export function listPiecesOwed(db: Db): string[] {
  return db
    .select({ id: tool.id })
    .from(tool)
    .where(eq(tool.pieces, 'owed'))
    .orderBy(asc(tool.id))
    .all()
    .map(({ id }) => id);
}

/** Broken tools with pieces missing that cut for a line, or went out in a kit for it: a piece may lie in one of its tubes. */
export function listPiecesMissing(db: Db, jobLineId: string): PiecesMissing[] {
  const missing = db
    .select({ toolId: tool.id, pieces: tool.pieces })
    .from(tool)
    .where(inArray(tool.pieces, ['owed', 'not-found']))
    .orderBy(asc(tool.id))
    .all();
  if (missing.length === 0) return [];
  const onLine = and(eq(cut.jobLineId, jobLineId), eq(cut.reversed, false));
  const cutIds = db.selectDistinct({ toolId: cut.toolId }).from(cut).where(onLine).all();
  const kits = db.select({ items: kit.items }).from(kit).where(eq(kit.jobLineId, jobLineId)).all();
  const used = new Set([...cutIds, ...kits.flatMap(({ items }) => items)].map(({ toolId }) => toolId));
  return missing.flatMap(({ toolId, pieces }) =>
    used.has(toolId) && (pieces === 'owed' || pieces === 'not-found') ? [{ toolId, pieces }] : [],
  );
}

/** Of them, those whose pieces are still searched for: while there are any, no end of the line leaves the house. */
export function listPiecesOwedOn(db: Db, jobLineId: string): string[] {
  return listPiecesMissing(db, jobLineId).flatMap(({ toolId, pieces }) =>
    pieces === 'owed' ? [toolId] : [],
  );
}
