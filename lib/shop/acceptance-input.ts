import { z } from 'zod';
import { endsSeen } from './acceptance';
import { entered, markedIdField } from './entry-fields';
import {
  dayField,
  entryIdField,
  form,
  keyField,
  listField,
  momentField,
  nameField,
  textField,
} from './field';
import { FAULT_DIRECTIONS, SuspectDisposalSchema, SuspectSchema } from './recall';

/** What the commands about accepted ends and recalls take, parsed once at the door. */

export const AcceptEndsInput = form({
  ...entered,
  ...endsSeen,
  /** When a device that was cut off gauged them, by its clock; null: now. No screen offers it. */
  gaugedAtMs: momentField('The moment of gauging').nullable().default(null),
  /** The shop’s day at that moment, as the server reads it. */
  gaugedOnDay: dayField('The day of gauging'),
});
export type AcceptEnds = z.output<typeof AcceptEndsInput>;

export const ShipJobInput = form({
  ...entered,
  jobId: keyField('The job'),
  onDay: dayField('The day it left'),
});
export type ShipJob = z.output<typeof ShipJobInput>;

export const OpenRecallInput = form({
  ...entered,
  gaugeId: markedIdField('the gauge', 'The gauge'),
  direction: z.enum(FAULT_DIRECTIONS, { error: 'Say which way it is out: large, small or not known.' }),
  found: nameField('What was found', 300),
  /** The calibration or check that showed it; null: somebody saw it. */
  foundEntryId: entryIdField.nullable(),
  foundOnDay: dayField('The day it was found'),
  /** The recall of its master, where that is why it is in doubt; null: it was found out itself. */
  masterRecallId: textField('The recall of the master', 64).nullable().default(null),
});
export type OpenRecall = z.output<typeof OpenRecallInput>;

const aboutRecall = { ...entered, recallId: keyField('The recall') };

export const ReviewRecallInput = form(aboutRecall);
export type ReviewRecall = z.output<typeof ReviewRecallInput>;

const { how, gaugeId, evidence } = SuspectDisposalSchema.shape;

/** One decision about the suspect ends of one or more looks. */
export const DisposeSuspectsInput = form({
  ...aboutRecall,
  items: listField('The ends', SuspectSchema, 500).min(1, 'Choose the ends that this is about.'),
  ...{ how, gaugeId, evidence },
  /** The shop’s day, as the server reads it. */
  onDay: dayField('The day'),
});
export type DisposeSuspects = z.output<typeof DisposeSuspectsInput>;

export const CloseRecallInput = form({
  ...aboutRecall,
  conclusion: nameField('What was concluded', 300),
});
export type CloseRecall = z.output<typeof CloseRecallInput>;
