import { asc, desc, eq, sql } from 'drizzle-orm';
import type { RecallRecord } from '../../lib/ledger/recall-history';
import type { Db } from '../open';
import { recall } from '../schema';

/** All recalls: the open ones first, the last opened on top. */
export function listRecalls(db: Db): RecallRecord[] {
  return db
    .select()
    .from(recall)
    .orderBy(sql`${recall.status} = 'closed'`, desc(recall.openedAtMs), asc(recall.id))
    .all()
    .map(({ data }) => data);
}

/** The recalls of one gauge, in the order in which they were opened. */
export function listRecallsOf(db: Db, gaugeId: string): RecallRecord[] {
  return db
    .select()
    .from(recall)
    .where(eq(recall.gaugeId, gaugeId))
    .orderBy(asc(recall.openedAtMs), asc(recall.id))
    .all()
    .map(({ data }) => data);
}

export function findRecall(db: Db, id: string): RecallRecord | undefined {
  return db.select().from(recall).where(eq(recall.id, id)).get()?.data;
}
