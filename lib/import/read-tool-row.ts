import { ok, type Result, refuse } from '../result';
import { isMarkable, tidyToolId } from '../shop/tool-id';
import type { Hand, Role, Service, ToolState } from '../shop/vocabulary';
import type { Rational } from '../units/rational';
import {
  quoteCell,
  readCountCell,
  readDayCell,
  readMeasureCell,
  readSizeCell,
  readWordCell,
} from './cell-value';
import type { RowReader } from './row-reader';
import { HAND_WORDS, ROLE_WORDS, SERVICE_WORDS, STATE_WORDS } from './word-list';

/** What a tools row says of what was cut before; null where the cell is empty. */
export type OpeningCell = 'new' | 'unknown' | number | null;

/** One row of a tools file as it was meant. An empty cell claims nothing. */
export interface ToolRow {
  readonly rowNo: number;
  readonly toolId: string;
  readonly role: Role | null;
  readonly partId: string;
  readonly size: Rational | null;
  readonly service: Service | null;
  readonly hand: Hand | null;
  readonly lot: string;
  readonly receivedOnDay: string | null;
  readonly opening: OpeningCell;
  readonly openingService: Service | null;
  readonly openingMaterial: string;
  readonly dueOnDay: string | null;
  readonly expiresOnDay: string | null;
  readonly openedOnDay: string | null;
  readonly levelMl: number | null;
  readonly state: ToolState | null;
  readonly note: string;
}

/** Reads one row of a tools file; undefined when the reader has noted errors. */
export function readToolRow(row: RowReader): ToolRow | undefined {
  const read = {
    rowNo: row.rowNo,
    toolId: row.needed('tool_id', readToolIdCell, 'Every row needs the mark of its tool.') ?? '',
    role: row.optional('kind', (text) =>
      readWordCell(text, ROLE_WORDS, 'die, blade, coning guide, GO ring or another kind of tool'),
    ),
    partId: row.text('part', 64),
    size: row.optional('size', readSizeCell),
    service: row.optional('service', readServiceCell),
    hand: row.optional('hand', (text) => readWordCell(text, HAND_WORDS, 'LH or RH')),
    lot: row.text('lot', 60),
    receivedOnDay: row.optional('received_on', readDayCell),
    opening: row.optional('opening', readOpeningCell),
    openingService: row.optional('opening_service', readServiceCell),
    openingMaterial: row.text('opening_material', 80),
    dueOnDay: row.optional('calibration_due', readDayCell),
    expiresOnDay: row.optional('shelf_life', readDayCell),
    openedOnDay: row.optional('opened_on', readDayCell),
    levelMl: row.optional('level_ml', (text) => readMeasureCell(text, { max: 1_000_000 })),
    state: row.optional('state', (text) =>
      readWordCell(text, STATE_WORDS, 'in the crib, quarantined, scrapped or another state'),
    ),
    note: row.text('note', 300),
  };
  if (read.role === null && read.partId === '' && row.errors.length === 0)
    row.refuse('kind', 'Say what it is: a kind, or the key of a part.');
  return row.errors.length === 0 ? read : undefined;
}

/** The text that says whether two rows are the same row. */
export function toolRowContent({ rowNo: _rowNo, ...said }: ToolRow): string {
  return JSON.stringify(Object.values(said));
}

/** A service in words. */
export function readServiceCell(text: string): Result<Service> {
  return readWordCell(text, SERVICE_WORDS, 'medium or high');
}

/** A tool's mark, tidied as a typed one is. */
export function readToolIdCell(text: string): Result<string> {
  const toolId = tidyToolId(text);
  return isMarkable(toolId)
    ? ok(toolId)
    : refuse('mark', `${quoteCell(text)} cannot be a mark: 2 to 16 letters, figures and single dashes.`);
}

function readOpeningCell(text: string): Result<'new' | 'unknown' | number> {
  const word = text.toLowerCase();
  if (word === 'new' || word === '0') return ok('new');
  if (word === 'unknown' || word === '?') return ok('unknown');
  const count = readCountCell(text, { min: 1, max: 100_000 });
  return count.ok
    ? count
    : refuse('opening', `${quoteCell(text)} is not read here. Write new, unknown or a number of ends.`);
}
