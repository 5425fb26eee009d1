import { z } from 'zod';
import { countField, dayField, form, keyField, textField } from '../shop/field';
import { JOB_VALUES } from '../shop/job';

/** An ID that the shop made: a tool, a line, an order. */
const idField = (name: string) =>
  z.string({ error: `${name} is needed.` }).regex(/^[^~]{1,80}$/, `${name} is needed, without a ~.`);
const pieces = countField('How many', { min: 1, max: 50 });

const SCHEMAS = {
  'add-line': form({
    kind: z.literal('add-line'),
    connectionId: keyField('The size'),
    materialId: keyField('The material'),
    ends: countField('Ends', { min: 1 }),
    startOnDay: dayField('The start day'),
    dueOnDay: dayField('The due day'),
    value: z.enum(JOB_VALUES, { error: 'The value must be ordinary or precious.' }),
  }).refine((line) => line.dueOnDay >= line.startOnDay, {
    message: 'The due day lies before the start day.',
    path: ['dueOnDay'],
  }),
  'change-dates': form({
    kind: z.literal('change-dates'),
    lineId: idField('The line'),
    startOnDay: dayField('The start day'),
    dueOnDay: dayField('The due day'),
  }).refine((line) => line.dueOnDay >= line.startOnDay, {
    message: 'The due day lies before the start day.',
    path: ['dueOnDay'],
  }),
  'change-material': form({
    kind: z.literal('change-material'),
    lineId: idField('The line'),
    materialId: keyField('The material'),
  }),
  'change-ends': form({
    kind: z.literal('change-ends'),
    lineId: idField('The line'),
    ends: countField('Ends', { min: 1 }),
  }),
  'drop-line': form({ kind: z.literal('drop-line'), lineId: idField('The line') }),
  'slip-order': form({
    kind: z.literal('slip-order'),
    orderId: idField('The order'),
    days: countField('Days', { min: -365, max: 365 }),
  }),
  'add-order': form({
    kind: z.literal('add-order'),
    partId: keyField('The part'),
    quantity: pieces,
    promisedOnDay: dayField('The day promised'),
    /** Absent: the part's first supplier. */
    supplier: textField('The supplier', 80)
      .regex(/^[^~]*$/, 'The supplier must be written without a ~.')
      .optional(),
  }),
  'lose-tool': form({ kind: z.literal('lose-tool'), toolId: idField('The tool') }),
  'add-tool': form({ kind: z.literal('add-tool'), partId: keyField('The part'), quantity: pieces }),
  'free-tool': form({ kind: z.literal('free-tool'), toolId: idField('The tool') }),
  'calibrate-tool': form({
    kind: z.literal('calibrate-tool'),
    toolId: idField('The gauge'),
    dueOnDay: dayField('The new due day'),
  }),
  'regrind-tool': form({
    kind: z.literal('regrind-tool'),
    toolId: idField('The blade'),
    backOnDay: dayField('The day back'),
  }),
  'add-bench': form({ kind: z.literal('add-bench'), quantity: pieces }),
} as const;

export type ChangeKind = keyof typeof SCHEMAS;

/**
 * One thing that could be otherwise, tried without being entered: a new line, other dates, material or ends, a job that falls
 * away, an order that slips or is placed, a tool lost, bought, freed, calibrated or reground, one more bench.
 */
export type Change = { [Kind in ChangeKind]: z.infer<(typeof SCHEMAS)[Kind]> }[ChangeKind];
export type ChangeOf<Kind extends ChangeKind> = Extract<Change, { kind: Kind }>;

export const CHANGE_KINDS = Object.keys(SCHEMAS) as readonly ChangeKind[];

/** The rule for one kind of change: one clear sentence for every field that is wrong. */
export function changeSchema(kind: ChangeKind): z.ZodType<Change> {
  return SCHEMAS[kind] as unknown as z.ZodType<Change>;
}

/** Whether a word names a kind of change. */
export function isChangeKind(word: string): word is ChangeKind {
  return (CHANGE_KINDS as readonly string[]).includes(word);
}
