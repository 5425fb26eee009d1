import { z } from 'zod';
import {
  countField,
  form,
  keyField,
  listField,
  measureField,
  microField,
  momentField,
  textField,
  yesNoField,
} from './field';
import { REJECT_CAUSES } from './vocabulary';

/** One row of the cut log: the whole content of `cut-logged`. */
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
  /** The bottle of fluid it was cut with, by its tool ID; absent where nobody said. */
  fluidId: textField('The fluid', 40).nullable().optional(),
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
