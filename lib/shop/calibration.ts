import { z } from 'zod';
import { dayField, form, listField, measureField, nameField, textField, yesNoField } from './field';

/** Whether it was within its limits when it came to the laboratory, before anybody adjusted it. */
export const AS_FOUND = ['in', 'out', 'not-taken'] as const;
export type AsFound = (typeof AS_FOUND)[number];

/** What errors are written in. Kept as typed with its unit; `lib/gauge/gauge-unit.ts` converts. */
export const GAUGE_UNITS = ['mm', 'um', 'in', 'deg', 'N.m', '%'] as const;
export type GaugeUnit = (typeof GAUGE_UNITS)[number];

const bound = { min: -1_000_000, max: 1_000_000 };

/**
 * One feature that was measured: its error as found and as left, the limits of that error, and how well it was measured.
 * All figures in the row's unit. A limit that is null does not exist: many gauges may err to one side only.
 */
export const FeatureSchema = form({
  feature: nameField('What was measured', 60),
  unit: z.enum(GAUGE_UNITS, { error: 'The unit must be mm, µm, in, degrees, N·m or per cent.' }),
  asFoundError: measureField('The error as found', bound).nullable(),
  asLeftError: measureField('The error as left', bound).nullable(),
  lowerLimit: measureField('The lower limit', bound).nullable(),
  upperLimit: measureField('The upper limit', bound).nullable(),
  /** Expanded uncertainty U = k·u. */
  expandedUncertainty: measureField('The uncertainty', { min: 0, max: 1_000_000 }).nullable(),
  /** k; 2 where the certificate does not say, which is the usual one. */
  coverageFactor: measureField('The coverage factor', { min: 0.5, max: 10 }).default(2),
}).refine((row) => row.lowerLimit === null || row.upperLimit === null || row.lowerLimit < row.upperLimit, {
  message: 'The lower limit must lie below the upper one.',
  path: ['lowerLimit'],
});
export type Feature = z.infer<typeof FeatureSchema>;

/** How a measured result is held against its limits; kept with the result. `lib/gauge/decision-rule.ts` says what each means. */
export const DECISION_RULES = ['simple', 'guarded', 'guarded-95'] as const;
export type DecisionRule = (typeof DECISION_RULES)[number];

/**
 * A gauge’s calibration: the whole content of `gauge-calibrated`. Only the first four are needed. What was not stated is
 * absent, never guessed: a certificate that does not say how the gauge was found is no evidence of how it was.
 */
export const CalibrationSchema = form({
  onDay: dayField('The day of calibration'),
  result: z.enum(['pass', 'fail'], { error: 'Say whether it passed.' }),
  dueOnDay: dayField('The next due day').nullable(),
  certificate: textField('The certificate', 60),
  laboratory: textField('The laboratory', 80).optional(),
  asFound: z.enum(AS_FOUND, { error: 'Say how it was found: in, out, or not taken.' }).optional(),
  adjusted: yesNoField('Adjusted').optional(),
  features: listField('The features', FeatureSchema, 12).optional(),
  rule: z.enum(DECISION_RULES, { error: 'That rule for the decision is not one we know.' }).optional(),
  /** The master that it was calibrated or set on, where that was done in the shop. */
  againstToolId: textField('The master', 40).optional(),
  /** It takes hold by its own day, whenever it is filed. Absent in older entries, which held by the order of entry. */
  takesHold: z.literal('by-day').optional(),
});
export type Calibration = z.infer<typeof CalibrationSchema>;
