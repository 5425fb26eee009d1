import { rowOfEnd } from '../../lib/trace/row-of-end';
import type { TracedCut } from '../../lib/trace/traced-cut';
import { statement } from '../ledger/statements';
import type { Db } from '../open';

const ROWS = `SELECT entry_id AS entryId, operation, tool_id AS toolId, person_id AS personId, cut_at_ms AS cutAtMs, ends,
    good_ends AS goodEnds, dry
  FROM cut WHERE job_line_id = ? AND operation = ? AND reversed = 0 ORDER BY cut_at_ms, seq`;

/** The rows of a line's cut log that an end falls in by count: its cone and its thread, as far as they were logged. */
export function cutsOfEnd(db: Db, end: { readonly jobLineId: string; readonly endNo: number }): TracedCut[] {
  return (['cone', 'thread'] as const).flatMap((operation) => {
    const rows = statement(db.$client, ROWS).all(end.jobLineId, operation) as (Omit<TracedCut, 'dry'> & {
      dry: 0 | 1;
    })[];
    const row = rowOfEnd(rows, end.endNo);
    return row === undefined ? [] : [{ ...row, dry: row.dry === 1 }];
  });
}
