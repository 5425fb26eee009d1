import { z } from 'zod';
import { countField, dayField, entryIdField, form, textField, yesNoField } from './field';

/** What can befall a gauge beside its calibration. Each schema is the whole content of one kind of entry. */

/** A check in the shop between two calibrations: `gauge-checked`. */
export const GaugeCheckSchema = form({
  onDay: dayField('The day of the check'),
  result: z.enum(['pass', 'fail'], { error: 'Say whether it passed the check.' }),
  /** The master it was checked on; null where none is marked. */
  againstToolId: textField('The master', 40).nullable(),
  /** Whether it was done and written down so that it counts as evidence that the gauge was good. */
  qualifies: yesNoField('Counts as evidence'),
});
export type GaugeCheck = z.infer<typeof GaugeCheckSchema>;

/** Dropped, knocked, over-forced: `gauge-dropped`. Nobody is asked how. */
export const GaugeDroppedSchema = form({ onDay: dayField('The day') });

/** Where an interval came from: a first judgement, the five published ways of review, or the shop’s own wish to be surer. */
export const INTERVAL_METHODS = [
  { code: 'first-judgement', label: 'first judgement' },
  { code: 'staircase', label: 'staircase' },
  { code: 'control-chart', label: 'control chart' },
  { code: 'in-use', label: 'ends in use' },
  { code: 'in-service-check', label: 'in-service checks' },
  { code: 'statistics', label: 'share found in' },
  { code: 'drift', label: 'its own drift' },
  { code: 'shorter', label: 'shorter, to be surer' },
] as const;
export type IntervalMethod = (typeof INTERVAL_METHODS)[number]['code'];

/** How long a calibration is good for: days, ends, or whichever comes first. `gauge-interval-set`. */
export const GaugeIntervalSchema = form({
  intervalDays: countField('The interval in days', { min: 1, max: 3660 }).nullable(),
  intervalEnds: countField('The interval in ends', { min: 1, max: 1_000_000 }).nullable(),
  method: z.enum(
    INTERVAL_METHODS.map(({ code }) => code),
    { error: 'Say how the interval was found.' },
  ),
}).refine((interval) => interval.intervalDays !== null || interval.intervalEnds !== null, {
  message: 'An interval needs days, ends, or both.',
  path: ['intervalDays'],
});
export type GaugeInterval = z.infer<typeof GaugeIntervalSchema>;

/** The types of file that a certificate may be kept as. */
export const CERTIFICATE_TYPES = ['application/pdf', 'image/png', 'image/jpeg'] as const;
export type CertificateType = (typeof CERTIFICATE_TYPES)[number];

/** The certificate itself, kept beside the record by the hash of its bytes: `gauge-certificate-filed`. */
export const CertificateFileSchema = form({
  /** The entry of the calibration that it belongs to. */
  calibrationId: entryIdField,
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'The file’s hash cannot be read.'),
  name: textField('The file’s name', 120),
  type: z.enum(CERTIFICATE_TYPES, { error: 'A certificate is kept as PDF, PNG or JPEG.' }),
  sizeBytes: countField('The file', { min: 1, max: 5_242_880 }),
});
export type CertificateFile = z.infer<typeof CertificateFileSchema>;
