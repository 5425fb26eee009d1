import type { AfterEnd, EdgeEnding } from '../../lib/import/edge-ending';
import type { EndCause } from '../../lib/shop/vocabulary';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

interface LifeEntry {
  readonly id: string;
  readonly kind: 'cut-logged' | 'edge-ended' | 'edge-renewed';
  readonly toolId: string;
  readonly payload: string;
}

const LIFE = `SELECT e.id, e.kind, e.subject_id AS toolId, CASE e.kind WHEN 'edge-ended' THEN e.payload ELSE '{}' END AS payload
  FROM entry e
  WHERE e.subject_kind = 'tool' AND e.kind IN ('cut-logged', 'edge-ended', 'edge-renewed')
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id)
  ORDER BY e.subject_id, e.seq`;

/** How edges ended, by the entry ID of the last row cut before. An edge that ended before any row has no place here. */
export function readEdgeEndings(db: Db): ReadonlyMap<string, EdgeEnding> {
  const endings = new Map<string, EdgeEnding>();
  let last: LifeEntry | undefined;
  for (const entry of statement(db.$client, LIFE).all() as LifeEntry[]) {
    if (entry.kind === 'cut-logged') last = entry;
    else if (last?.toolId === entry.toolId) endings.set(last.id, withEntry(endings.get(last.id), entry));
  }
  return endings;
}

function withEntry(before: EdgeEnding | undefined, entry: LifeEntry): EdgeEnding {
  if (entry.kind === 'edge-renewed') return { cause: before?.cause ?? null, after: 'reground' };
  const { cause, to } = JSON.parse(entry.payload) as { cause: EndCause; to: AfterEnd };
  return before ?? { cause, after: to };
}
