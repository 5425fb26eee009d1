import { z } from 'zod';
import { CalibrationSchema } from './calibration';
import { rejectsField } from './cut';
import { aboutTool, entered } from './entry-fields';
import {
  countField,
  dayField,
  entryIdField,
  form,
  keyField,
  listField,
  measureField,
  momentField,
  nameField,
  textField,
  yesNoField,
} from './field';
import { FluidLevelSchema, FluidOpenedSchema } from './fluid-entry';
import { JobSchema } from './job';
import { EdgeEndSchema, IssueSchema, MoveSchema, ReadingSchema, ReturnSchema } from './noun';
import { OrderSchema } from './order';

/**
 * What each command takes, parsed once at the door. `entryId` and `deviceAtMs` are made on the device; a command that
 * writes several entries derives the further IDs from the first.
 */

export const LogCutInput = form({
  ...aboutTool,
  connectionId: keyField('The connection'),
  materialId: keyField('The material'),
  heat: textField('The heat', 40).default(''),
  ends: countField('Ends cut', { min: 1, max: 5000 }),
  goodEnds: countField('Good ends', { min: 0, max: 5000 }),
  threadLength: form({
    typed: textField('The thread length', 24),
    unit: z.enum(['mm', 'in'], { error: 'The unit must be mm or in.' }),
  })
    .nullable()
    .default(null),
  dry: yesNoField('Cut dry').default(false),
  rework: yesNoField('Cut again').default(false),
  /** The bottle of fluid it was cut with, by its tool ID. */
  fluidId: textField('The fluid', 40).nullable().default(null),
  rejects: rejectsField.default([]),
  jobLineId: textField('The job line', 80).nullable().default(null),
  /** When it was cut, where that is not now. */
  cutAtMs: momentField('The day it was cut').nullable().default(null),
});
export type LogCut = z.output<typeof LogCutInput>;

export const CorrectCutInput = form({
  ...entered,
  targetId: entryIdField,
  /** The tool that it was really cut with, or null when nothing was cut at all. */
  rightToolId: textField('The right tool', 40).nullable(),
});
export type CorrectCut = z.output<typeof CorrectCutInput>;

export const IssueToolInput = form({ ...aboutTool, ...IssueSchema.omit({ onDay: true }).shape });
export type IssueTool = z.output<typeof IssueToolInput>;

export const ReturnToolInput = form({
  ...aboutTool,
  ...ReturnSchema.shape,
});
export type ReturnTool = z.output<typeof ReturnToolInput>;

export const MoveToolInput = form({ ...aboutTool, ...MoveSchema.shape });
export type MoveTool = z.output<typeof MoveToolInput>;

export const EndEdgeInput = form({ ...aboutTool, ...EdgeEndSchema.shape });
export type EndEdge = z.output<typeof EndEdgeInput>;

export const RenewEdgeInput = form({
  ...aboutTool,
  onDay: dayField('The day it came back'),
  /** Whether its first end is still to be gauged; owed unless somebody says that it has passed. */
  firstOff: z.enum(['owed', 'passed'], { error: 'Say whether the first-off has passed.' }).default('owed'),
  /** The gauges that it passed. */
  gaugeIds: listField('The gauges', textField('The gauge ID', 40), 10).default([]),
});
export type RenewEdge = z.output<typeof RenewEdgeInput>;

export const ReadEdgeInput = form({ ...aboutTool, ...ReadingSchema.shape });
export type ReadEdge = z.output<typeof ReadEdgeInput>;

export const RecordCalibrationInput = form({ ...aboutTool, ...CalibrationSchema.shape });
export type RecordCalibration = z.output<typeof RecordCalibrationInput>;

export const OpenFluidInput = form({ ...aboutTool, ...FluidOpenedSchema.shape });
export type OpenFluid = z.output<typeof OpenFluidInput>;

export const ReadFluidLevelInput = form({ ...aboutTool, ...FluidLevelSchema.shape });
export type ReadFluidLevel = z.output<typeof ReadFluidLevelInput>;

/** What a tool had cut before it came here, in shop words. */
export const OpeningInput = z.discriminatedUnion(
  'known',
  [
    form({ known: z.literal('new') }),
    form({ known: z.literal('unknown') }),
    form({
      known: z.literal('counted'),
      connectionId: keyField('The connection'),
      materialId: keyField('The material'),
      ends: countField('Ends already cut', { min: 1, max: 100_000 }),
    }),
  ],
  { error: 'Say what it had cut before: nothing, not known, or counted.' },
);

export const ReceiveToolInput = form({
  ...aboutTool,
  partId: keyField('The part'),
  /** The hand as marked on the tool itself; null for a tool without a hand. */
  hand: z.enum(['LH', 'RH'], { error: 'The hand must be LH or RH.' }).nullable().default(null),
  lot: textField('The lot', 60).default(''),
  receivedOnDay: dayField('The day received'),
  opening: OpeningInput.default({ known: 'new' }),
  dueOnDay: dayField('The calibration due day').nullable().default(null),
  expiresOnDay: dayField('The shelf-life day').nullable().default(null),
  openedOnDay: dayField('The day opened').nullable().default(null),
  levelMl: measureField('The level', { min: 0, max: 1_000_000 }).nullable().default(null),
  orderId: keyField('The order').nullable().default(null),
  certificate: z
    .enum(['in-order', 'missing', 'wrong'], { error: 'Say whether its certificate is in order.' })
    .optional(),
  /** It really is of the wrong hand: take it into quarantine, to be sent back. */
  takeWrongHand: yesNoField('Wrong hand').optional(),
});
export type ReceiveTool = z.output<typeof ReceiveToolInput>;

export const PlanJobInput = form({ ...entered, job: JobSchema });
export type PlanJob = z.output<typeof PlanJobInput>;

export const CloseJobInput = form({
  ...entered,
  jobId: keyField('The job'),
  how: z.enum(['done', 'cancelled'], { error: 'Say whether it is done or cancelled.' }),
});
export type CloseJob = z.output<typeof CloseJobInput>;

export const PlaceOrderInput = form({ ...entered, order: OrderSchema });
export type PlaceOrder = z.output<typeof PlaceOrderInput>;

export const SlipOrderInput = form({
  ...entered,
  orderId: keyField('The order'),
  expectedOnDay: dayField('The new day'),
  /** When the supplier said so; absent: when it is entered. */
  onDay: dayField('The day of the news').optional(),
});
export type SlipOrder = z.output<typeof SlipOrderInput>;

export const ReverseEntryInput = form({
  ...entered,
  targetId: entryIdField,
  reason: nameField('The reason', 300),
});
export type ReverseEntry = z.output<typeof ReverseEntryInput>;
