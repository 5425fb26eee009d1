import { z } from 'zod';
import { DECISION_RULES } from './calibration';
import { stamped } from './entry-fields';
import { form, textField } from './field';

/** Below this, one gauge in five is out at the end of its interval. Common practice, no source. */
export const TARGET_LEAST = 0.8;
/** Above this no shop’s own results can tell the difference. Common practice, no source. */
export const TARGET_MOST = 0.99;

const BOUNDS = 'How sure an interval shall be lies between 80 and 99 %.';

/** How the shop judges its gauges: the whole content of `gauge-settings-set`. Results keep the rule they were judged by. */
export const GaugeSettingsSchema = form({
  /** The rule that a certificate’s figures are held against, unless another is chosen with the certificate. */
  decisionRule: z.enum(DECISION_RULES, { error: 'Say how the uncertainty counts.' }),
  /** How likely a gauge shall be within its limits at the end of its interval. A share, 0.8 to 0.99. */
  targetReliability: z.number({ error: BOUNDS }).min(TARGET_LEAST, BOUNDS).max(TARGET_MOST, BOUNDS),
  /** Why: it stands beside every proposal that rests on it. */
  why: textField('The reason', 300).min(3, 'Say why: it stands beside what follows from it.'),
});
export type GaugeSettings = z.infer<typeof GaugeSettingsSchema>;

/** What the form of the gauge settings sends. */
export const SetGaugeSettingsInput = z.object({ ...stamped, settings: GaugeSettingsSchema });
export type SetGaugeSettings = z.output<typeof SetGaugeSettingsInput>;
