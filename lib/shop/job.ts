import { z } from 'zod';
import { AcceptanceRuleSchema } from './acceptance-rule';
import { DUTIES } from './duty';
import { countField, dayField, form, keyField, listField, textField } from './field';
import { LineShownSchema } from './line-shown';
import { OPERATIONS } from './vocabulary';

/** A job and its lines: connection × material × ends × dates × value. The whole content of `job-set`. */
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
  /** What the tube will carry. Absent: ordinary service. */
  duty: z
    .enum(DUTIES, { error: 'The duty must be ordinary, oxygen, hydrogen or drinking water.' })
    .optional(),
}).refine((line) => line.dueOnDay >= line.startOnDay, {
  message: 'The due day lies before the start day.',
  path: ['dueOnDay'],
});
export type JobLine = z.infer<typeof JobLineSchema>;

export const JobSchema = form({
  id: keyField('The job number'),
  title: textField('The job’s title', 120),
  lines: listField('The lines', JobLineSchema, 200).min(1, 'A job needs at least one line.'),
  /** What its ends must show, where the job says so itself. Absent: the size table, then the shop. */
  acceptanceRule: AcceptanceRuleSchema.optional(),
  /** What the plan said of its lines when it was entered; absent where nothing was said. */
  shown: listField('What was shown', LineShownSchema, 200).optional(),
});
export type Job = z.infer<typeof JobSchema>;
