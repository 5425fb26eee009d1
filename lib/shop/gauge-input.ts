import type { z } from 'zod';
import { entered, markedIdField } from './entry-fields';
import { form, textField } from './field';
import {
  CertificateFileSchema,
  GaugeCheckSchema,
  GaugeDroppedSchema,
  GaugeIntervalSchema,
} from './gauge-entry';

/** What the commands about gauges take, parsed once at the door. */
const aboutGauge = { ...entered, toolId: markedIdField('the gauge’s ID', 'The gauge’s ID') };

export const CheckGaugeInput = form({ ...aboutGauge, ...GaugeCheckSchema.shape });
export type CheckGauge = z.output<typeof CheckGaugeInput>;

export const DropGaugeInput = form({ ...aboutGauge, ...GaugeDroppedSchema.shape });
export type DropGauge = z.output<typeof DropGaugeInput>;

/** An interval is somebody's decision: it carries their name and why. */
export const SetGaugeIntervalInput = form({
  ...aboutGauge,
  ...GaugeIntervalSchema.shape,
  reason: textField('The reason', 300).min(3, 'Say why: the decision stands under your name.'),
}).refine((input) => input.intervalDays !== null || input.intervalEnds !== null, {
  message: 'An interval needs days, ends, or both.',
  path: ['intervalDays'],
});
export type SetGaugeInterval = z.output<typeof SetGaugeIntervalInput>;

export const FileCertificateInput = form({
  ...aboutGauge,
  calibrationId: CertificateFileSchema.shape.calibrationId,
  name: CertificateFileSchema.shape.name,
});
export type FileCertificate = z.output<typeof FileCertificateInput>;
