import { z } from 'zod';
import { AcceptanceSchema } from '../shop/acceptance';
import { BeliefSchema } from '../shop/belief';
import { CalibrationSchema } from '../shop/calibration';
import { LineCleanedSchema } from '../shop/cleaning';
import { ConflictSchema, ConflictSettledSchema } from '../shop/conflict';
import { CostsSchema } from '../shop/costs';
import { CutSchema } from '../shop/cut';
import { dayField } from '../shop/field';
import {
  FluidDisposedSchema,
  FluidDropsSchema,
  FluidExtendedSchema,
  FluidLevelSchema,
  FluidOpenedSchema,
} from '../shop/fluid-entry';
import { FluidLotSchema } from '../shop/fluid-lot';
import {
  CertificateFileSchema,
  GaugeCheckSchema,
  GaugeDroppedSchema,
  GaugeIntervalSchema,
} from '../shop/gauge-entry';
import { GaugeSettingsSchema } from '../shop/gauge-settings';
import { JobSchema } from '../shop/job';
import {
  AdjustmentSchema,
  FirstOffSchema,
  KitClosedSchema,
  KitSchema,
  KitSearchSchema,
  PiecesSchema,
  ReservationSchema,
} from '../shop/kit';
import { MarkSchema } from '../shop/mark';
import {
  ConnectionSchema,
  EdgeEndSchema,
  IssueSchema,
  LifeGuessSchema,
  MaterialSchema,
  MoveSchema,
  PersonSchema,
  ReadingSchema,
  ReceiptSchema,
  RenewalSchema,
  ReturnSchema,
} from '../shop/noun';
import {
  OrderApprovalSchema,
  OrderCancelSchema,
  OrderChaseSchema,
  OrderDraftSchema,
  OrderReceiptSchema,
  OrderSchema,
  OrderSlipSchema,
} from '../shop/order';
import { PartSchema } from '../shop/part';
import { ReadingSettingsSchema } from '../shop/reading-settings';
import {
  RecallClosingSchema,
  RecallExtensionSchema,
  RecallSchema,
  SuspectDisposalSchema,
} from '../shop/recall';
import { ShopSchema } from '../shop/shop-settings';
import { StockCountSchema } from '../shop/stock-count';

/**
 * Everything that can happen. The ledger holds nothing else, so this file is the whole history of a shop in outline.
 * `subject` is what the entry is about; all entries of one subject, in order, are its history.
 */
export const ENTRY = {
  'shop-set': { subject: 'shop', payload: ShopSchema },
  'person-set': { subject: 'person', payload: PersonSchema },
  'connection-set': { subject: 'connection', payload: ConnectionSchema },
  'material-set': { subject: 'material', payload: MaterialSchema },
  'part-set': { subject: 'part', payload: PartSchema },
  'costs-set': { subject: 'costs', payload: CostsSchema },
  'reading-settings-set': { subject: 'reading-settings', payload: ReadingSettingsSchema },
  'gauge-settings-set': { subject: 'gauge-settings', payload: GaugeSettingsSchema },
  'fluid-lot-set': { subject: 'fluid-lot', payload: FluidLotSchema },
  'belief-set': { subject: 'belief', payload: BeliefSchema },
  'life-guess-set': { subject: 'guess', payload: LifeGuessSchema },
  'job-set': { subject: 'job', payload: JobSchema },
  'line-cleaned': { subject: 'job', payload: LineCleanedSchema },
  'job-closed': { subject: 'job', payload: z.object({ how: z.enum(['done', 'cancelled']) }) },
  'job-shipped': { subject: 'job', payload: z.object({ onDay: dayField('The day it left') }) },
  'order-placed': { subject: 'order', payload: OrderSchema },
  'order-drafted': { subject: 'order', payload: OrderDraftSchema },
  'order-approved': { subject: 'order', payload: OrderApprovalSchema },
  'order-slipped': { subject: 'order', payload: OrderSlipSchema },
  'order-chased': { subject: 'order', payload: OrderChaseSchema },
  'order-received': { subject: 'order', payload: OrderReceiptSchema },
  'order-cancelled': { subject: 'order', payload: OrderCancelSchema },
  'kit-issued': { subject: 'kit', payload: KitSchema },
  'kit-search-opened': { subject: 'kit', payload: KitSearchSchema },
  'stock-counted': { subject: 'count', payload: StockCountSchema },
  'conflict-raised': { subject: 'conflict', payload: ConflictSchema },
  'conflict-settled': { subject: 'conflict', payload: ConflictSettledSchema },
  'kit-closed': { subject: 'kit', payload: KitClosedSchema },
  'ends-accepted': { subject: 'acceptance', payload: AcceptanceSchema },
  'recall-opened': { subject: 'recall', payload: RecallSchema },
  'recall-extended': { subject: 'recall', payload: RecallExtensionSchema },
  'suspect-disposed': { subject: 'recall', payload: SuspectDisposalSchema },
  'recall-closed': { subject: 'recall', payload: RecallClosingSchema },
  'tool-received': { subject: 'tool', payload: ReceiptSchema },
  'cut-logged': { subject: 'tool', payload: CutSchema },
  'tool-issued': { subject: 'tool', payload: IssueSchema },
  'tool-returned': { subject: 'tool', payload: ReturnSchema },
  'tool-moved': { subject: 'tool', payload: MoveSchema },
  'tool-marked': { subject: 'tool', payload: MarkSchema },
  'tool-reserved': { subject: 'tool', payload: ReservationSchema },
  'tool-freed': { subject: 'tool', payload: z.object({}) },
  'pieces-accounted': { subject: 'tool', payload: PiecesSchema },
  'die-adjusted': { subject: 'tool', payload: AdjustmentSchema },
  'first-off-checked': { subject: 'tool', payload: FirstOffSchema },
  'edge-ended': { subject: 'tool', payload: EdgeEndSchema },
  'edge-read': { subject: 'tool', payload: ReadingSchema },
  'edge-renewed': { subject: 'tool', payload: RenewalSchema },
  'gauge-calibrated': { subject: 'tool', payload: CalibrationSchema },
  'gauge-checked': { subject: 'tool', payload: GaugeCheckSchema },
  'gauge-dropped': { subject: 'tool', payload: GaugeDroppedSchema },
  'gauge-interval-set': { subject: 'tool', payload: GaugeIntervalSchema },
  'gauge-certificate-filed': { subject: 'tool', payload: CertificateFileSchema },
  'fluid-opened': { subject: 'tool', payload: FluidOpenedSchema },
  'fluid-level-read': { subject: 'tool', payload: FluidLevelSchema },
  'fluid-drops-counted': { subject: 'tool', payload: FluidDropsSchema },
  'fluid-extended': { subject: 'tool', payload: FluidExtendedSchema },
  'fluid-disposed': { subject: 'tool', payload: FluidDisposedSchema },
} as const;

export type EntryKind = keyof typeof ENTRY;
export type SubjectKind = (typeof ENTRY)[EntryKind]['subject'];
export type PayloadOf<K extends EntryKind> = z.infer<(typeof ENTRY)[K]['payload']>;

/** What every entry carries beside its content. */
export interface EntryEnvelope {
  /** Made on the device, so that sending an entry twice counts once. */
  readonly id: string;
  readonly subjectId: string;
  /** What the device's clock said; kept as evidence, never used for order. */
  readonly deviceAtMs: number;
  readonly reason: string;
}

/** An entry about to be made: content with its kind, not yet in the ledger. */
export type Draft = {
  [K in EntryKind]: EntryEnvelope & { readonly kind: K; readonly payload: PayloadOf<K> };
}[EntryKind];

/** An entry in the ledger: who, when by the server's clock, and its place in the order. */
export type Entry = Draft & { readonly seq: number; readonly actorId: string; readonly serverAtMs: number };

/** The kind of subject that an entry of this kind is about. */
export function subjectOf(kind: EntryKind): SubjectKind {
  return ENTRY[kind].subject;
}
