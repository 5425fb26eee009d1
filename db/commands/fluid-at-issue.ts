import { judgeBottle } from '../../lib/fluid/judge-bottle';
import { type FluidWork, fluidWorkOf } from '../../lib/fluid/permit-fluid';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Db } from '../open';
import { findLine } from '../queries/jobs';
import { listBottles } from '../queries/kit-stock';
import { listMaterials } from '../queries/tables';

/**
 * Whether a bottle may go out by itself, for a job line or on loan: the judgement of the counter. The refusal names what to
 * use instead. Any other tool passes. Asked before anything of the entry is recorded.
 */
export function checkFluidIssue(
  db: Db,
  issue: { readonly tool: Pick<ToolRecord, 'id' | 'role'> | undefined; readonly jobLineId: string | null },
  today: string,
): Result<null, Refusal> {
  const { tool, jobLineId } = issue;
  if (tool?.role !== 'fluid') return ok(null);
  const bottles = listBottles(db);
  const bottle = bottles.find(({ toolId }) => toolId === tool.id);
  if (bottle === undefined) return ok(null);
  const refusal = judgeBottle(bottle, bottles, workOf(db, jobLineId), today);
  return refusal === null ? ok(null) : refuse('fluid', refusal.sentence, 'toolId');
}

/** What a job line asks of the fluid; null where it is no line that the record knows. */
function workOf(db: Db, jobLineId: string | null): FluidWork | null {
  const line = jobLineId === null ? undefined : findLine(db, jobLineId);
  if (line === undefined) return null;
  return fluidWorkOf(
    line,
    listMaterials(db).find(({ id }) => id === line.materialId),
  );
}
