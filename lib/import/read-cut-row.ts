import { ok, type Result, refuse } from '../result';
import type { Service } from '../shop/vocabulary';
import { type LengthUnit, parseLength } from '../units/parse-length';
import type { Rational } from '../units/rational';
import { readCountCell, readDayCell, readSizeCell, readWordCell, readYesNoCell } from './cell-value';
import { type EdgeEnding, readEdgeEnding } from './edge-ending';
import { readServiceCell, readToolIdCell } from './read-tool-row';
import { type Rejects, readRejects } from './reject-list';
import type { RowReader } from './row-reader';
import { UNIT_WORDS } from './word-list';

/** One row of a cuts file as it was meant. */
export interface CutRow {
  readonly rowNo: number;
  /** The row's own ID, or null where it is to be made from what the row says. */
  readonly entryId: string | null;
  readonly toolId: string;
  readonly cutOnDay: string;
  readonly size: Rational;
  readonly service: Service;
  readonly material: string;
  readonly heat: string;
  readonly ends: number;
  readonly goodEnds: number;
  readonly threadLength: {
    readonly typed: string;
    readonly unit: LengthUnit;
    readonly lengthMm: number;
  } | null;
  readonly dry: boolean;
  readonly rework: boolean;
  /** The bottle of fluid, or empty. */
  readonly fluid: string;
  readonly job: string;
  readonly by: string;
  readonly rejects: Rejects;
  readonly ending: EdgeEnding | null;
  readonly reversed: boolean;
}

const ENDS = { min: 1, max: 5000 };

/** Reads one row of a cuts file; undefined when the reader has noted errors. */
export function readCutRow(row: RowReader): CutRow | undefined {
  const ends = row.needed('ends', (text) => readCountCell(text, ENDS));
  const rejects = row.optional('rejects', readRejects) ?? [];
  const rejected = rejects.reduce((sum, reject) => sum + reject.count, 0);
  const goodEnds = row.optional('good_ends', (text) => readCountCell(text, { min: 0, max: ENDS.max }));
  const read = {
    entryId: row.optional('entry_id', readEntryIdCell),
    toolId: row.needed('tool_id', readToolIdCell),
    cutOnDay: row.needed('cut_on', readDayCell),
    size: row.needed('size', readSizeCell),
    service: row.needed('service', readServiceCell),
    material: row.needed('material', (text) => ok(text)),
    heat: row.text('heat', 40),
    threadLength: readThreadLength(row),
    dry: row.optional('dry', readYesNoCell) ?? false,
    rework: row.optional('rework', readYesNoCell) ?? false,
    fluid: row.optional('fluid', readToolIdCell) ?? '',
    job: row.text('job', 80),
    by: row.text('by', 40),
    ending: row.optional('edge_ended', readEdgeEnding),
    reversed: row.optional('reversed', readYesNoCell) ?? false,
  };
  const { toolId, cutOnDay, size, service, material } = read;
  if (ends !== null && (goodEnds ?? 0) > ends)
    row.refuse('good_ends', `More good ends than the ${ends} cut.`);
  else if (ends !== null && rejected > ends - (goodEnds ?? 0))
    row.refuse('rejects', `The rejects and the good ends add up to more than the ${ends} ends cut.`);
  if (row.errors.length > 0 || ends === null || toolId === null || cutOnDay === null) return undefined;
  if (size === null || service === null || material === null) return undefined;
  const needed = { toolId, cutOnDay, size, service, material, ends };
  return { rowNo: row.rowNo, ...read, ...needed, rejects, goodEnds: goodEnds ?? ends - rejected };
}

/**
 * The text that says whether two rows are the same row: what was cut, when and with what. How the edge ended is left
 * out, so that writing it in later adds the ending and not the cut again.
 */
export function cutRowContent(row: CutRow): string {
  const { toolId, cutOnDay, size, service, material, heat, ends, goodEnds, threadLength, dry, rework } = row;
  const { job, by, rejects, fluid } = row;
  const what = [toolId, cutOnDay, size.num, size.den, service, material.toLowerCase(), heat];
  const how = [ends, goodEnds, threadLength?.lengthMm ?? null, dry, rework, job, by.toLowerCase(), rejects];
  // Rows from before bottles were named keep the ID they were known by.
  return JSON.stringify([...what, ...how, ...(fluid === '' ? [] : [fluid])]);
}

function readThreadLength(row: RowReader): CutRow['threadLength'] {
  const unit = row.optional('thread_length_unit', (text) => readWordCell(text, UNIT_WORDS, 'mm or in'));
  return row.optional('thread_length', (text) => {
    const length = parseLength(text, unit ?? undefined);
    if (!length.ok) return length;
    const typed = text.replace(/\s*(?:mm|in\.?|inch(?:es)?|"|″|”|'')\s*$/i, '');
    if (typed.length > 20) return refuse('length', 'This length has too many figures.');
    return ok({ typed, unit: length.value.unit, lengthMm: length.value.lengthMm });
  });
}

function readEntryIdCell(text: string): Result<string> {
  return /^[A-Za-z0-9_.:-]{8,64}$/.test(text)
    ? ok(text)
    : refuse('entry-id', 'A row’s own ID must be 8 to 64 letters, figures, dashes, dots or colons.');
}
