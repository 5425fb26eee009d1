import type { RowRemark } from '../../lib/import/group-jobs';
import type { ReadFile } from '../../lib/import/read-rows';
import type { RowError } from '../../lib/import/row-reader';
import { makeShopIndex, type ShopIndex } from '../../lib/import/shop-index';
import type { Refusal } from '../../lib/result';
import { toolKey } from '../../lib/shop/tool-id';
import type { Env, Ledger } from '../ledger/ledger';
import type { Db } from '../open';
import { listPeople } from '../queries/shop';
import { listConnections, listMaterials, listParts } from '../queries/tables';

/** What becomes of one row. */
export type Standing = 'new' | 'already-there' | 'left-out' | 'error';

/** The columns that the fields of a refusal from elsewhere are called in a file. */
const COLUMN_OF_FIELD: ReadonlyMap<string, string> = new Map([
  ['toolId', 'tool_id'],
  ['partId', 'part'],
  ['connectionId', 'size'],
  ['materialId', 'material'],
  ['goodEnds', 'good_ends'],
  ['threadLength', 'thread_length'],
  ['threadLengthMm', 'thread_length'],
  ['dueOnDay', 'calibration_due'],
  ['receivedOnDay', 'received_on'],
  ['jobLineId', 'job'],
]);

/** One import under way inside its transaction: the shop's tables, the ledger, and what became of each row so far. */
export class ImportRun {
  readonly db: Db;
  readonly ledger: Ledger;
  readonly env: Env;
  readonly index: ShopIndex;
  /** The marked IDs of the tools in the record by their look-up keys. */
  readonly toolIds: ReadonlyMap<string, string>;
  readonly errors: RowError[] = [];
  readonly remarks: RowRemark[] = [];
  readonly counts: Record<Standing, number> = { new: 0, 'already-there': 0, 'left-out': 0, error: 0 };
  readonly shown = new Map<number, Standing>();
  readonly #places: ReadFile['places'];

  constructor(db: Db, ledger: Ledger, file: ReadFile, env: Env) {
    this.db = db;
    this.ledger = ledger;
    this.env = env;
    this.#places = file.places;
    this.index = makeShopIndex({
      connections: listConnections(db),
      materials: listMaterials(db),
      people: listPeople(db),
      parts: listParts(db),
    });
    const ids = db.$client.prepare('SELECT id FROM tool').pluck().all() as string[];
    this.toolIds = new Map(ids.map((id) => [toolKey(id), id]));
    for (const row of file.firstRows) this.shown.set(row.rowNo, 'error');
  }

  /** Notes what became of a row. */
  settle(rowNo: number, standing: Standing): void {
    this.counts[standing] += 1;
    if (this.shown.has(rowNo)) this.shown.set(rowNo, standing);
  }

  /** Notes a row that cannot be imported, under the column of ours that is at fault. */
  fault(rowNo: number, key: string | null, sentence: string): void {
    const column = key === null ? null : (this.#places.get(key)?.header ?? key);
    this.errors.push({ rowNo, column, sentence });
    this.settle(rowNo, 'error');
  }

  /** The same for a refusal of the shop's own rules. */
  refuse(rowNo: number, { field, sentence }: Refusal, key: string | null = null): void {
    this.fault(rowNo, field === undefined ? key : (COLUMN_OF_FIELD.get(field) ?? field), sentence);
  }
}
