import { z } from 'zod';
import { countField, dayField, form, listField, momentField, nameField, textField } from './field';

/** How a gauge came to be known as out or in doubt: its calibration, a check in the shop, somebody saw it, or its master. */
export const RECALL_CAUSES = [
  'calibration-failed',
  'check-failed',
  'found-by-hand',
  'master-found-out',
] as const;
export type RecallCause = (typeof RECALL_CAUSES)[number];
export const RECALL_CAUSE_LABEL: Record<RecallCause, string> = {
  'calibration-failed': 'failed its calibration',
  'check-failed': 'failed a check in the shop',
  'found-by-hand': 'found out at the bench',
  'master-found-out': 'in doubt through its master',
};

/** Which way the gauge is out: larger or smaller than it should be, or nobody knows. */
export const FAULT_DIRECTIONS = ['large', 'small', 'unknown'] as const;
export type FaultDirection = (typeof FAULT_DIRECTIONS)[number];
export const FAULT_DIRECTION_LABEL: Record<FaultDirection, string> = {
  large: 'too large: worn or opened',
  small: 'too small: closed or built up',
  unknown: 'not known',
};

/** What the window opens at. `none`: nothing shows that the gauge was ever good, so it opens at its first use. */
export const GOOD_EVIDENCE_KINDS = ['as-found', 'interim', 'as-left', 'none'] as const;
export type GoodEvidenceKind = (typeof GOOD_EVIDENCE_KINDS)[number];

export const SuspectSchema = form({
  acceptanceId: textField('The acceptance', 64).min(1),
  endCount: countField('Ends', { min: 1, max: 500 }),
});
export type Suspect = z.infer<typeof SuspectSchema>;

const suspectList = listField('The suspect ends', SuspectSchema, 20_000);
const refusedList = listField('The refused ends', textField('An acceptance', 64), 20_000);

/** What the window rests on, and when it opens. */
export const WindowOpeningSchema = form({
  /** After this moment, up to and with `windowToMs`, ends accepted with the gauge are suspect; null: from its first use. */
  windowFromMs: momentField('The last good evidence').nullable(),
  evidence: z.enum(GOOD_EVIDENCE_KINDS),
  evidenceEntryId: textField('The evidence', 64).nullable(),
  evidenceOnDay: dayField('The day of the evidence').nullable(),
});

/** A gauge found out: what is suspect, from when and why. The whole content of `recall-opened`. */
export const RecallSchema = form({
  gaugeId: textField('The gauge', 40).min(1, 'Scan or type the gauge.'),
  cause: z.enum(RECALL_CAUSES, { error: 'Say how it was found out.' }),
  direction: z.enum(FAULT_DIRECTIONS, { error: 'Say which way it is out: large, small or not known.' }),
  found: textField('What was found', 300),
  /** The entry that showed it: a calibration or a check; null when somebody saw it. */
  foundEntryId: textField('The entry', 64).nullable(),
  foundOnDay: dayField('The day it was found'),
  ...WindowOpeningSchema.shape,
  windowToMs: momentField('The end of the window'),
  /** The recall of the master that it was checked or set on, where that is what casts the doubt. */
  masterRecallId: textField('The recall of the master', 64).optional(),
  suspects: suspectList,
  /** Acceptances that refused ends by this gauge in the window: they may have been good. */
  refusedIds: refusedList,
});
export type Recall = z.infer<typeof RecallSchema>;

/** Ends that came to light after the recall was opened. The content of `recall-extended`. */
export const RecallExtensionSchema = form({
  suspects: suspectList,
  refusedIds: refusedList,
  /** The window moved back, where the evidence it rested on no longer stands. Absent: as it was. */
  window: WindowOpeningSchema.optional(),
});

export const DISPOSITIONS = [
  'regauged-good',
  'cleared-otherwise',
  'reworked',
  'scrapped',
  'concession',
  'customer-told',
  'taken-back',
] as const;
export type Disposition = (typeof DISPOSITIONS)[number];
export const DISPOSITION_LABEL: Record<Disposition, string> = {
  'regauged-good': 'gauged again, good',
  'cleared-otherwise': 'cleared by another check',
  reworked: 'made again',
  scrapped: 'scrapped',
  concession: 'concession',
  'customer-told': 'customer told, decides',
  'taken-back': 'entry was taken back',
};

/** What was decided about some of the suspect ends of one acceptance. The whole content of `suspect-disposed`. */
export const SuspectDisposalSchema = form({
  ...SuspectSchema.shape,
  how: z.enum(DISPOSITIONS, { error: 'Say what was done with these ends.' }),
  /** The other gauge, where they were gauged again. */
  gaugeId: textField('The other gauge', 40).nullable(),
  /** Who granted it, which check, how the customer was told. */
  evidence: textField('On what grounds', 300),
});
export type SuspectDisposal = z.infer<typeof SuspectDisposalSchema>;

export const RecallClosingSchema = form({
  conclusion: nameField('What was concluded', 300),
  /** The shop’s day; absent in entries from before it was written down. */
  onDay: dayField('The day').optional(),
});
