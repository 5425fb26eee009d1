import { z } from 'zod';
import { dayField, form, textField } from './field';

/** A gauge’s calibration: the whole content of `gauge-calibrated`. */
export const CalibrationSchema = form({
  onDay: dayField('The day of calibration'),
  result: z.enum(['pass', 'fail'], { error: 'Say whether it passed.' }),
  dueOnDay: dayField('The next due day').nullable(),
  certificate: textField('The certificate', 60),
});
