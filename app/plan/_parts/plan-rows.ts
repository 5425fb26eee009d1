import { materialWords } from '@/app/_shared/words/material-words';
import type { LineRow } from '@/db/queries/jobs';
import type { LineVerdict } from '@/lib/capability/line-verdict';
import type { Outlook } from '@/lib/outlook/outlook';
import { endsToMake, requiredProbability } from '@/lib/outlook/plan-facts';
import { readConnectionKey } from '@/lib/shop/connection-text';
import type { Connection, Material } from '@/lib/shop/noun';
import { sizeLabel } from '@/lib/shop/size';
import { SERVICE_LABEL } from '@/lib/shop/vocabulary';

/** A line of the plan with everything that a screen says of it. */
export interface PlanRow {
  readonly line: LineRow;
  readonly verdict: LineVerdict;
  /** Undefined: the shop's table has no row for this size. */
  readonly connection: Connection | undefined;
  readonly sizeText: string;
  readonly material: Material | undefined;
  readonly materialText: string;
  readonly endsToMake: number;
  readonly requiredProbability: number;
}

/** The lines with their verdicts, in the order in which they are served. */
export function planRows(outlook: Outlook, lines: readonly LineRow[]): PlanRow[] {
  const byId = new Map(lines.map((line) => [line.id, line]));
  return outlook.lines.flatMap((verdict) => {
    const line = byId.get(verdict.lineId);
    return line === undefined ? [] : [planRow(outlook, line, verdict)];
  });
}

function planRow(outlook: Outlook, line: LineRow, verdict: LineVerdict): PlanRow {
  const { connections, materials, shop } = outlook.facts;
  const material = materials.find(({ id }) => id === line.materialId);
  return {
    line,
    verdict,
    connection: connections.find(({ id }) => id === line.connectionId),
    sizeText: sizeTextOf(connections, line.connectionId),
    material,
    materialText: material === undefined ? line.materialId : materialWords(material),
    endsToMake: endsToMake(line),
    requiredProbability: requiredProbability(shop, line.value),
  };
}

/** The size as a sentence says it, table row or not: "3⁄8 in medium pressure". */
export function sizeTextOf(connections: readonly Connection[], connectionId: string): string {
  const size = connections.find(({ id }) => id === connectionId) ?? readConnectionKey(connectionId);
  if (size === undefined) return connectionId;
  return `${sizeLabel({ num: size.odNum, den: size.odDen })} in ${SERVICE_LABEL[size.service]}`;
}

/** How a line is called in a sentence: "job 41", or "job 41, line 2" where the job has several. */
export function lineLabeller(lines: readonly LineRow[]): (lineId: string) => string {
  const counts = new Map<string, number>();
  for (const { jobId } of lines) counts.set(jobId, (counts.get(jobId) ?? 0) + 1);
  const byId = new Map(lines.map((line) => [line.id, line]));
  return (lineId) => {
    const line = byId.get(lineId);
    if (line === undefined) return `job line ${lineId}`;
    return (counts.get(line.jobId) ?? 0) > 1 ? `job ${line.jobId}, line ${line.lineNo}` : `job ${line.jobId}`;
  };
}
