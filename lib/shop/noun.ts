import { z } from 'zod';
import { FindingSchema } from '../reading/reading';
import {
  countField,
  dayField,
  entryIdField,
  form,
  keyField,
  listField,
  measureField,
  microField,
  nameField,
  textField,
  yesNoField,
} from './field';
import { ShownSchema } from './shown';
import { END_CAUSES, HANDS, ROLES, SERVICES, TOOL_STATES } from './vocabulary';

/**
 * The nouns of the shop as they are written down: each schema is the whole content of one ledger entry that sets or
 * replaces the noun. Lengths in mm, days as YYYY-MM-DD, money in minor units, tube sizes as exact inch rationals.
 */

export const PERSON_ROLES = ['attendant', 'lead', 'technician', 'quality'] as const;
export type PersonRole = (typeof PERSON_ROLES)[number];

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

/** "A 9⁄16 die is good for about 150 threads, give or take a factor of two." */
export const LifeGuessSchema = form({
  partId: keyField('The part'),
  connectionId: keyField('The connection'),
  ends: measureField('The typical life', { min: 1, max: 1_000_000 }),
  giveOrTake: measureField('Give or take', { min: 1.05, max: 20 }),
});
export type LifeGuess = z.infer<typeof LifeGuessSchema>;

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
  /** Its certificate, where that was looked at and is not in order. */
  certificate: z.enum(['missing', 'wrong']).optional(),
  /** Why it went into quarantine at the door; absent where it went into the crib. */
  quarantine: textField('Why it is set aside', 200).optional(),
});
export type Receipt = z.infer<typeof ReceiptSchema>;

export const IssueSchema = form({
  toPersonId: keyField('Who it goes to'),
  jobLineId: textField('The job line', 80).nullable(),
  bench: textField('The bench', 24),
  /** The kit it goes out in; absent where it goes out alone. */
  kitId: entryIdField.nullable().optional(),
  /** What was said of the tool for this work when it was issued; absent where nothing was. */
  shown: ShownSchema.optional(),
  /** The shop’s day when it went out; absent in entries from before it was written down. */
  onDay: dayField('The day').optional(),
});
export const RETURN_CONDITIONS = ['ok', 'dull', 'damaged', 'unsure'] as const;
export type ReturnCondition = (typeof RETURN_CONDITIONS)[number];
export const ReturnSchema = form({
  condition: z.enum(RETURN_CONDITIONS, { error: 'Say in what condition it came back.' }),
  /** Something broke off: its pieces are to be accounted for. Absent where nothing did. */
  pieces: z.enum(['none', 'owed'], { error: 'Say whether pieces are to be found.' }).optional(),
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
  /** Something broke off: its pieces are to be accounted for. Absent where nothing did. */
  pieces: z.enum(['none', 'owed'], { error: 'Say whether pieces are to be found.' }).optional(),
});
export const RenewalSchema = form({
  onDay: dayField('The day it came back'),
  /** Whether its first end is still to be gauged before it is issued. Absent in entries from before this was asked. */
  firstOff: z.enum(['owed', 'passed'], { error: 'Say whether the first-off has passed.' }).optional(),
  /** The gauges that it passed; absent where it is owed, and in older entries. */
  gaugeIds: listField('The gauges', textField('The gauge ID', 40), 10).optional(),
});
export const ReadingSchema = form({ finding: FindingSchema, onDay: dayField('The day of the reading') });
