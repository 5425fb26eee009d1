import { z } from 'zod';
import { BeliefSchema } from '../shop/belief';
import { CalibrationSchema } from '../shop/calibration';
import { CostsSchema } from '../shop/costs';
import { CutSchema } from '../shop/cut';
import { dayField } from '../shop/field';
import { FluidLevelSchema, FluidOpenedSchema } from '../shop/fluid-entry';
import { JobSchema } from '../shop/job';
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
import { OrderSchema } from '../shop/order';
import { PartSchema } from '../shop/part';
import { ShopSchema } from '../shop/shop-settings';

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
  'belief-set': { subject: 'belief', payload: BeliefSchema },
  'life-guess-set': { subject: 'guess', payload: LifeGuessSchema },
  'job-set': { subject: 'job', payload: JobSchema },
  'job-closed': { subject: 'job', payload: z.object({ how: z.enum(['done', 'cancelled']) }) },
  'order-placed': { subject: 'order', payload: OrderSchema },
  'order-slipped': { subject: 'order', payload: z.object({ expectedOnDay: dayField('The new day') }) },
  'order-received': { subject: 'order', payload: z.object({ quantity: z.number().int().min(1) }) },
  'tool-received': { subject: 'tool', payload: ReceiptSchema },
  'cut-logged': { subject: 'tool', payload: CutSchema },
  'tool-issued': { subject: 'tool', payload: IssueSchema },
  'tool-returned': { subject: 'tool', payload: ReturnSchema },
  'tool-moved': { subject: 'tool', payload: MoveSchema },
  'edge-ended': { subject: 'tool', payload: EdgeEndSchema },
  'edge-read': { subject: 'tool', payload: ReadingSchema },
  'edge-renewed': { subject: 'tool', payload: RenewalSchema },
  'gauge-calibrated': { subject: 'tool', payload: CalibrationSchema },
  'fluid-opened': { subject: 'tool', payload: FluidOpenedSchema },
  'fluid-level-read': { subject: 'tool', payload: FluidLevelSchema },
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
