import { dayOfMs } from '../calendar/day';
import type { JobRecord } from '../ledger/job-history';
import type { ToolRecord } from '../ledger/tool-record';
import type { Cut } from '../shop/cut';
import type { JobLine } from '../shop/job';
import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { fractionAscii } from '../units/fraction-text';
import type { CutColumn } from './cut-columns';
import { type EdgeEnding, edgeEndingText } from './edge-ending';
import type { JobColumn } from './job-columns';
import { rejectsText } from './reject-list';
import type { ToolColumn } from './tool-columns';

/** A tool with what its cells need. */
export interface ToolForExport {
  readonly tool: Pick<
    ToolRecord,
    | 'id'
    | 'partId'
    | 'role'
    | 'hand'
    | 'lot'
    | 'receivedOnDay'
    | 'opening'
    | 'state'
    | 'stateReason'
    | 'dueOnDay'
    | 'expiresOnDay'
    | 'openedOnDay'
    | 'levelMl'
  >;
  readonly part: Part | undefined;
  /** The sizes in the shop's table by key. */
  readonly connections: ReadonlyMap<string, Connection>;
}

/** One tool as cells of a tools file, which `readToolRow` reads back. */
export function toolCells({ tool, part, connections }: ToolForExport): Record<ToolColumn, string> {
  const { opening } = tool;
  const counted = opening.known === 'counted' ? connections.get(opening.connectionId) : undefined;
  const fits = (part?.fitsConnectionIds ?? []).flatMap((id) => connections.get(id) ?? []);
  const sizes = new Set(fits.map(sizeCell));
  const services = new Set(fits.map((fit) => fit.service));
  return {
    tool_id: tool.id,
    kind: tool.role,
    part: tool.partId,
    size: counted ? sizeCell(counted) : sizes.size === 1 ? ([...sizes][0] ?? '') : '',
    service: services.size === 1 ? ([...services][0] ?? '') : '',
    hand: tool.hand ?? '',
    lot: tool.lot,
    received_on: tool.receivedOnDay,
    opening: opening.known === 'counted' ? String(opening.ends) : opening.known,
    opening_service: counted?.service ?? '',
    opening_material: opening.known === 'counted' ? opening.materialId : '',
    calibration_due: tool.dueOnDay ?? '',
    shelf_life: tool.expiresOnDay ?? '',
    opened_on: tool.openedOnDay ?? '',
    level_ml: tool.levelMl === null ? '' : decimalText(tool.levelMl),
    state: tool.state,
    note: tool.stateReason,
  };
}

/** A row of the cut log with what its cells need. */
export interface CutForExport {
  readonly entryId: string;
  readonly toolId: string;
  readonly cut: Cut;
  readonly connection: Connection | undefined;
  readonly by: string;
  readonly ending: EdgeEnding | null;
  readonly reversed: boolean;
}

/** One row of the cut log as cells of a cuts file, which `readCutRow` reads back. The day is that of UTC. */
export function cutCells(row: CutForExport): Record<CutColumn, string> {
  const { cut, connection } = row;
  const length = lengthCells(cut);
  return {
    entry_id: row.entryId,
    tool_id: row.toolId,
    cut_on: dayOfMs(cut.cutAtMs),
    size: connection === undefined ? '' : sizeCell(connection),
    service: connection?.service ?? '',
    material: cut.materialId,
    heat: cut.heat,
    ends: String(cut.ends),
    good_ends: String(cut.goodEnds),
    thread_length: length.figure,
    thread_length_unit: length.unit,
    dry: yesNo(cut.dry),
    fluid: cut.fluidId ?? '',
    rework: yesNo(cut.rework),
    job: cut.jobLineId ?? '',
    by: row.by,
    rejects: rejectsText(cut.rejects),
    edge_ended: row.ending === null ? '' : edgeEndingText(row.ending),
    reversed: yesNo(row.reversed),
  };
}

/** One line of a job as cells of a jobs file, which `readJobRow` reads back. */
export function jobCells(
  job: Pick<JobRecord, 'id' | 'title' | 'status'>,
  line: JobLine,
  size: { readonly odNum: number; readonly odDen: number; readonly service: string } | undefined,
): Record<JobColumn, string> {
  const does = (operation: JobLine['operations'][number]) => yesNo(line.operations.includes(operation));
  return {
    job: job.id,
    title: job.title,
    line: String(line.lineNo),
    size: size === undefined ? '' : sizeCell(size),
    service: size?.service ?? '',
    material: line.materialId,
    heat: line.heat,
    ends: String(line.ends),
    cone: does('cone'),
    thread: does('thread'),
    assemble: does('assemble'),
    start_on: line.startOnDay,
    due_on: line.dueOnDay,
    value: line.value,
    status: job.status,
  };
}

/** With its unit: a spreadsheet program takes a bare 9/16 for a day in September. */
function sizeCell({ odNum, odDen }: { readonly odNum: number; readonly odDen: number }): string {
  return `${fractionAscii({ num: odNum, den: odDen })} in`;
}

/** The length as it was typed, or in mm; a fraction keeps its unit in the cell, for the same reason as a size. */
function lengthCells(cut: Cut): { figure: string; unit: string } {
  if (cut.threadLengthMm === null) return { figure: '', unit: '' };
  const typed = /^(.+) (mm|in)$/.exec(cut.threadLengthTyped);
  if (typed === null) return { figure: decimalText(cut.threadLengthMm), unit: 'mm' };
  const [figure = '', unit = ''] = typed.slice(1);
  return { figure: figure.includes('/') || figure.includes('⁄') ? `${figure} ${unit}` : figure, unit };
}

function decimalText(value: number): string {
  return value.toFixed(6).replace(/\.?0+$/, '');
}

function yesNo(yes: boolean): string {
  return yes ? 'yes' : 'no';
}
