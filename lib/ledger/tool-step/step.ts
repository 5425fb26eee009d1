import type { Refusal, Result } from '../../result';
import type { Entry, EntryKind, PayloadOf } from '../event';
import type { ToolRecord } from '../tool-record';

/** One kind of entry applied to a tool: the new record, or the refusal that keeps the entry out of the ledger. */
export type ToolStep<K extends EntryKind> = (
  tool: ToolRecord,
  payload: PayloadOf<K>,
  entry: Entry,
) => Result<ToolRecord, Refusal>;
