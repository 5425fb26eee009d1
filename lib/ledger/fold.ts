import type { ReadingSettings } from '../reading/reading-settings';
import { ok, type Refusal, type Result } from '../result';
import type { Belief } from '../shop/belief';
import type { Costs } from '../shop/costs';
import type { FluidLot } from '../shop/fluid-lot';
import type { GaugeSettings } from '../shop/gauge-settings';
import type { Connection, LifeGuess, Material, Person } from '../shop/noun';
import type { Part } from '../shop/part';
import type { Shop } from '../shop/shop-settings';
import { type AcceptanceRecord, evolveAcceptance } from './acceptance-history';
import { type ConflictRecord, evolveConflict } from './conflict-history';
import { type CountRecord, evolveCount } from './count-history';
import type { Entry, SubjectKind } from './event';
import { evolveJob, type JobRecord } from './job-history';
import { evolveKit, type KitRecord } from './kit-history';
import { evolveOrder, type OrderRecord } from './order-history';
import { evolvePart } from './part-history';
import { evolveRecall, type RecallRecord } from './recall-history';
import { evolveTool } from './tool-history';
import type { ToolRecord } from './tool-record';

/** The record that the entries of each kind of subject add up to. */
export interface RecordOf {
  shop: Shop;
  person: Person;
  connection: Connection;
  material: Material;
  part: Part;
  guess: LifeGuess;
  belief: Belief;
  costs: Costs;
  'reading-settings': ReadingSettings;
  'gauge-settings': GaugeSettings;
  'fluid-lot': FluidLot;
  job: JobRecord;
  order: OrderRecord;
  kit: KitRecord;
  conflict: ConflictRecord;
  count: CountRecord;
  tool: ToolRecord;
  acceptance: AcceptanceRecord;
  recall: RecallRecord;
}

type Evolve = {
  [S in SubjectKind]: (record: RecordOf[S] | undefined, entry: Entry) => Result<RecordOf[S], Refusal>;
};

/** For nouns that one entry sets as a whole: the last entry wins. */
function replaced<S extends SubjectKind>(
  _record: RecordOf[S] | undefined,
  entry: Entry,
): Result<RecordOf[S], Refusal> {
  return ok(entry.payload as RecordOf[S]);
}

const EVOLVE: Evolve = {
  shop: replaced<'shop'>,
  person: replaced<'person'>,
  connection: replaced<'connection'>,
  material: replaced<'material'>,
  part: evolvePart,
  guess: replaced<'guess'>,
  belief: replaced<'belief'>,
  costs: replaced<'costs'>,
  'reading-settings': replaced<'reading-settings'>,
  'gauge-settings': replaced<'gauge-settings'>,
  'fluid-lot': replaced<'fluid-lot'>,
  job: evolveJob,
  order: evolveOrder,
  kit: evolveKit,
  conflict: evolveConflict,
  count: evolveCount,
  tool: evolveTool,
  acceptance: evolveAcceptance,
  recall: evolveRecall,
};

/** One more entry about one subject. */
export function evolve<S extends SubjectKind>(
  kind: S,
  record: RecordOf[S] | undefined,
  entry: Entry,
): Result<RecordOf[S], Refusal> {
  return EVOLVE[kind](record, entry);
}

/**
 * A subject's record: the fold of its entries, reversed ones left out. Undefined when none is left. Refuses when an
 * entry no longer stands without one that was left out.
 */
export function foldSubject<S extends SubjectKind>(
  kind: S,
  entries: Iterable<Entry>,
): Result<RecordOf[S] | undefined, Refusal> {
  let record: RecordOf[S] | undefined;
  for (const entry of entries) {
    const next = evolve(kind, record, entry);
    if (!next.ok) return next;
    record = next.value;
  }
  return ok(record);
}

/** The first entry that cannot stand on those before it; undefined when all of them can. */
export function findUnsupported(kind: SubjectKind, entries: Iterable<Entry>): Entry | undefined {
  let record: RecordOf[SubjectKind] | undefined;
  for (const entry of entries) {
    const next = evolve(kind, record as never, entry);
    if (!next.ok) return entry;
    record = next.value;
  }
  return undefined;
}
