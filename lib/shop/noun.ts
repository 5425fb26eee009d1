import { z } from 'zod';
import { FindingSchema } from '../reading/reading';
import {
  countField,
  dayField,
  form,
  keyField,
  listField,
  measureField,
  microField,
  momentField,
  nameField,
  textField,
  yesNoField,
} from './field';
import { ShownSchema } from './shown';
import { END_CAUSES, HANDS, OPERATIONS, REJECT_CAUSES, ROLES, SERVICES, TOOL_STATES } from './vocabulary';

/**
 * The nouns of the shop as they are written down: each schema is the whole content of one ledger entry that sets or
 * replaces the noun. Lengths in mm, days as YYYY-MM-DD, money in minor units, tube sizes as exact inch rationals.
 */

export const PERSON_ROLES = ['attendant', 'lead', 'technician', 'quality'] as const;
export type PersonRole = (typeof PERSON_ROLES)[number];

export const ShopSchema = form({
  name: nameField('The shop’s name'),
  units: z.enum(['in', 'mm'], { error: 'The units must be in or mm.' }).default('in'),
  currency: z
    .string({ error: 'The currency is needed.' })
    .regex(/^[A-Z]{3}$/, 'The currency is three letters, as in ISO 4217.')
    .default('USD'),
  /** Required probability for a line that can be remade, and for one that cannot. */
  requiredProbability: measureField('The required probability', { min: 0.5, max: 0.999 }).default(0.9),
  requiredProbabilityPrecious: measureField('The required probability', { min: 0.5, max: 0.999 }).default(
    0.95,
  ),
  /** Measured use of fluid over planned use: what runs off and is wiped away. Common practice 2 to 5, no source. */
  fluidWasteFactor: measureField('The fluid waste factor', { min: 1, max: 20 }).default(3),
});
export type Shop = z.infer<typeof ShopSchema>;

export const PersonSchema = form({
  id: keyField('The person’s key'),
  name: nameField('The name', 40),
  role: z.enum(PERSON_ROLES, { error: 'The role must be attendant, lead, technician or quality.' }),
});
export type Person = z.infer<typeof PersonSchema>;

export const ConnectionSchema = form({
  id: keyField('The connection’s key'),
  odNum: countField('The tube size', { min: 1, max: 999 }),
  odDen: countField('The tube size', { min: 1, max: 64 }),
  service: z.enum(SERVICES, { error: 'The service must be medium or high.' }),
  tpi: measureField('Threads per inch', { min: 4, max: 80 }),
  hand: z.enum(HANDS, { error: 'The hand must be LH or RH.' }),
  threadClass: textField('The thread class', 8),
  threadLengthMm: measureField('The thread length', { min: 1, max: 200 }),
  coneAngleDeg: measureField('The cone angle', { min: 10, max: 170 }),
  noseMm: measureField('The nose diameter', { min: 0.1, max: 200 }),
  /** How many turns NOT GO may run on; null: no rule given, so nobody may assume one. */
  notGoTurnsMax: measureField('NOT GO turns', { min: 0, max: 10 }).nullable(),
  /** True once the shop has checked the row against the fitting maker's manual. */
  confirmed: yesNoField('Confirmed'),
  inUse: yesNoField('In use'),
});
export type Connection = z.infer<typeof ConnectionSchema>;

export const MaterialSchema = form({
  id: keyField('The material’s key'),
  name: nameField('The material’s name', 60),
  condition: textField('The condition', 60),
  /** Wear factor first guess: how much faster an edge wears than in the reference material. */
  factor: measureField('The wear factor', { min: 0.05, max: 50 }),
  /** Give or take this factor: the 10–90 % band is factor ÷ this … factor × this. 1 for the reference itself. */
  factorGiveOrTake: measureField('Give or take', { min: 1, max: 20 }),
  isReference: yesNoField('Reference'),
});
export type Material = z.infer<typeof MaterialSchema>;

export const PartSchema = form({
  id: keyField('The part’s key'),
  role: z.enum(ROLES, { error: 'The kind of part is not one we know.' }),
  name: nameField('The part’s name', 100),
  /** What an order line spells out, e.g. "9/16-18 UNF-LH, split". */
  designation: textField('The designation', 100),
  hand: z.enum(HANDS, { error: 'The hand must be LH or RH.' }).nullable(),
  adjustable: yesNoField('Adjustable'),
  /** Matched blades are ground together and kept as one tool. */
  matchedPair: yesNoField('Matched pair'),
  regrindLimit: countField('The regrind limit', { max: 20 }),
  fitsConnectionIds: listField('The connections', keyField('A connection'), 100),
  supplier: textField('The supplier', 80),
  priceMinor: countField('The price', { max: 100_000_000 }).nullable(),
  leadTimeDays: countField('The lead time', { max: 1000 }).nullable(),
  permittedMaterialIds: z.union([z.literal('all'), listField('The materials', keyField('A material'), 100)], {
    error: 'The permitted materials must be all, or a list of at most 100.',
  }),
  chlorinated: z.enum(['yes', 'no', 'unknown'], { error: 'Chlorinated must be yes, no or unknown.' }),
  openedLifeDays: countField('Opened life', { max: 5000 }).nullable(),
  dropsPerMl: measureField('Drops per mL', { min: 5, max: 200 }).nullable(),
  /** What one container of a fluid holds; null for what is no fluid, or not written down. */
  containerMl: measureField('The container', { min: 1, max: 1_000_000 }).nullable().default(null),
});
export type Part = z.infer<typeof PartSchema>;

/** "A 9⁄16 die is good for about 150 threads, give or take a factor of two." */
export const LifeGuessSchema = form({
  partId: keyField('The part'),
  connectionId: keyField('The connection'),
  ends: measureField('The typical life', { min: 1, max: 1_000_000 }),
  giveOrTake: measureField('Give or take', { min: 1.05, max: 20 }),
});
export type LifeGuess = z.infer<typeof LifeGuessSchema>;

export const JOB_VALUES = ['ordinary', 'precious'] as const;

export const JobLineSchema = form({
  lineNo: countField('The line number', { min: 1, max: 999 }),
  connectionId: keyField('The connection'),
  materialId: keyField('The material'),
  heat: textField('The heat', 40),
  ends: countField('Ends', { min: 1, max: 100_000 }),
  operations: listField(
    'The operations',
    z.enum(OPERATIONS, { error: 'An operation must be cone, thread or assemble.' }),
    OPERATIONS.length,
  ).min(1, 'Say what is done: cone, thread or assemble.'),
  startOnDay: dayField('The start day'),
  dueOnDay: dayField('The due day'),
  /** `precious`: it cannot be remade, so the plan asks for more certainty. */
  value: z.enum(JOB_VALUES, { error: 'The value must be ordinary or precious.' }),
}).refine((line) => line.dueOnDay >= line.startOnDay, {
  message: 'The due day lies before the start day.',
  path: ['dueOnDay'],
});
export type JobLine = z.infer<typeof JobLineSchema>;

export const JobSchema = form({
  id: keyField('The job number'),
  title: textField('The job’s title', 120),
  lines: listField('The lines', JobLineSchema, 200).min(1, 'A job needs at least one line.'),
});
export type Job = z.infer<typeof JobSchema>;

export const OrderSchema = form({
  id: keyField('The order number'),
  partId: keyField('The part'),
  quantity: countField('The quantity', { min: 1, max: 10_000 }),
  placedOnDay: dayField('The order day'),
  expectedOnDay: dayField('The expected day'),
});
export type Order = z.infer<typeof OrderSchema>;

/** What a tool had cut before it was first entered here. */
export const OpeningSchema = z.discriminatedUnion(
  'known',
  [
    form({ known: z.literal('new') }),
    form({ known: z.literal('unknown') }),
    form({
      known: z.literal('counted'),
      connectionId: keyField('The connection'),
      materialId: keyField('The material'),
      ends: countField('Ends already cut', { min: 1, max: 100_000 }),
      exposureMicro: microField('The exposure'),
    }),
  ],
  { error: 'Say what it had cut before: nothing, not known, or counted.' },
);
export type Opening = z.infer<typeof OpeningSchema>;

export const ReceiptSchema = form({
  partId: keyField('The part'),
  role: z.enum(ROLES, { error: 'The kind of part is not one we know.' }),
  hand: z.enum(HANDS, { error: 'The hand must be LH or RH.' }).nullable(),
  lot: textField('The lot', 60),
  receivedOnDay: dayField('The day received'),
  opening: OpeningSchema,
  dueOnDay: dayField('The calibration due day').nullable(),
  expiresOnDay: dayField('The shelf-life day').nullable(),
  openedOnDay: dayField('The day opened').nullable(),
  levelMl: measureField('The level', { min: 0, max: 1_000_000 }).nullable(),
  orderId: keyField('The order').nullable(),
});
export type Receipt = z.infer<typeof ReceiptSchema>;

/** Ends that were refused, by cause. */
export const rejectsField = listField(
  'The rejects',
  form({
    cause: z.enum(
      REJECT_CAUSES.map((cause) => cause.code),
      { error: 'A reject needs a cause from the list.' },
    ),
    count: countField('Rejects', { min: 1, max: 5000 }),
  }),
  20,
);

export const CutSchema = form({
  operation: z.enum(['cone', 'thread'], { error: 'Say whether cones or threads were cut.' }),
  connectionId: keyField('The connection'),
  materialId: keyField('The material'),
  heat: textField('The heat', 40),
  ends: countField('Ends cut', { min: 1, max: 5000 }),
  goodEnds: countField('Good ends', { min: 0, max: 5000 }),
  /** Thread length of each end where it differs from the connection's; null: the connection's own. */
  threadLengthMm: measureField('The thread length', { min: 1, max: 200 }).nullable(),
  /** What was typed, kept beside the converted value. */
  threadLengthTyped: textField('The thread length as typed', 32),
  dry: yesNoField('Cut dry'),
  rework: yesNoField('Cut again'),
  rejects: rejectsField,
  jobLineId: textField('The job line', 80).nullable(),
  cutAtMs: momentField('The day it was cut'),
  /** Base exposure of the whole row in millionths of a turn (thread) or of a mm³ (cone). */
  exposureMicro: microField('The exposure'),
  /** The reversed entry that this one replaces. */
  correctsId: textField('The corrected entry', 64).nullable(),
})
  .refine((cut) => cut.goodEnds <= cut.ends, { message: 'More good ends than ends cut.', path: ['goodEnds'] })
  .refine((cut) => cut.rejects.reduce((sum, reject) => sum + reject.count, 0) <= cut.ends - cut.goodEnds, {
    message: 'The rejects by cause add up to more than the ends that were not good.',
    path: ['rejects'],
  });
export type Cut = z.infer<typeof CutSchema>;

export const IssueSchema = form({
  toPersonId: keyField('Who it goes to'),
  jobLineId: textField('The job line', 80).nullable(),
  bench: textField('The bench', 24),
  /** What was said of the tool for this work when it was issued; absent where nothing was. */
  shown: ShownSchema.optional(),
});
export const RETURN_CONDITIONS = ['ok', 'dull', 'damaged', 'unsure'] as const;
export const ReturnSchema = form({
  condition: z.enum(RETURN_CONDITIONS, { error: 'Say in what condition it came back.' }),
});
export const MoveSchema = form({
  to: z.enum(TOOL_STATES, { error: 'Say where it goes.' }),
  backOnDay: dayField('The day it is expected back').nullable(),
});
export const EdgeEndSchema = form({
  cause: z.enum(
    END_CAUSES.map((cause) => cause.code),
    { error: 'Say why its life ended.' },
  ),
  to: z.enum(['scrapped', 'regrind', 'quarantined'], { error: 'Say where it goes.' }),
});
export const RenewalSchema = form({ onDay: dayField('The day it came back') });
export const CalibrationSchema = form({
  onDay: dayField('The day of calibration'),
  result: z.enum(['pass', 'fail'], { error: 'Say whether it passed.' }),
  dueOnDay: dayField('The next due day').nullable(),
  certificate: textField('The certificate', 60),
});
export const ReadingSchema = form({ finding: FindingSchema, onDay: dayField('The day of the reading') });
export const FluidOpenedSchema = form({ onDay: dayField('The day opened') });
export const FluidLevelSchema = form({
  levelMl: measureField('The level', { min: 0, max: 1_000_000 }),
  onDay: dayField('The day read'),
});
