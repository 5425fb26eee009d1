import { z } from 'zod';
import { ConflictSettledSchema } from './conflict';
import { aboutTool, entered, markedIdField } from './entry-fields';
import { entryIdField, form, keyField, listField, textField } from './field';
import {
  AdjustmentSchema,
  FirstOffSchema,
  KitClosedSchema,
  KitSchema,
  KitSearchSchema,
  PiecesSchema,
  ReservationSchema,
} from './kit';
import { ShownSchema } from './shown';
import { SCANNED_MAX, StockCountSchema } from './stock-count';

/** What the commands about kits, and about a tool's care between jobs, take; parsed once at the door. */
const scanned = markedIdField();

export const IssueKitInput = form({
  ...entered,
  jobLineId: KitSchema.shape.jobLineId,
  toPersonId: keyField('Who it goes to'),
  bench: textField('The bench', 24).default(''),
  toolIds: listField('The items', scanned, 40).min(1, 'Scan at least one item into the kit.'),
  /** What was said of the edges in it when it went out, by tool. */
  shown: z.record(z.string(), ShownSchema).default({}),
});
export type IssueKit = z.output<typeof IssueKitInput>;

/** Several tools back at once, each looked at and in order. */
export const ReturnToolsInput = form({
  ...entered,
  toolIds: listField('The items', scanned, 40).min(1, 'Scan at least one item that comes back.'),
});
export type ReturnTools = z.output<typeof ReturnToolsInput>;

const aboutKit = { ...entered, kitId: entryIdField };

export const SearchKitInput = form({ ...aboutKit, ...KitSearchSchema.shape });
export type SearchKit = z.output<typeof SearchKitInput>;

export const CloseKitInput = form({
  ...aboutKit,
  lostToolIds: KitClosedSchema.shape.lostToolIds.default([]),
});
export type CloseKit = z.output<typeof CloseKitInput>;

export const ReserveToolInput = form({ ...aboutTool, ...ReservationSchema.omit({ onDay: true }).shape });
export type ReserveTool = z.output<typeof ReserveToolInput>;

export const FreeToolInput = form(aboutTool);
export type FreeTool = z.output<typeof FreeToolInput>;

export const AccountPiecesInput = form({ ...aboutTool, ...PiecesSchema.shape });
export type AccountPieces = z.output<typeof AccountPiecesInput>;

export const AdjustDieInput = form({ ...aboutTool, ...AdjustmentSchema.shape });
export type AdjustDie = z.output<typeof AdjustDieInput>;

export const CheckFirstOffInput = form({ ...aboutTool, ...FirstOffSchema.shape });
export type CheckFirstOff = z.output<typeof CheckFirstOffInput>;

export const CountStockInput = form({
  ...entered,
  scope: StockCountSchema.shape.scope,
  connectionId: StockCountSchema.shape.connectionId,
  edgeKind: StockCountSchema.shape.edgeKind,
  scanned: listField('What was scanned', scanned, SCANNED_MAX),
  /** Each difference with its reason and what becomes of it. */
  variances: StockCountSchema.shape.variances,
});
export type CountStock = z.output<typeof CountStockInput>;

export const SettleConflictInput = form({
  ...entered,
  conflictId: entryIdField,
  ...ConflictSettledSchema.shape,
});
export type SettleConflict = z.output<typeof SettleConflictInput>;
