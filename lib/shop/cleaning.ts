import type { z } from 'zod';
import { countField, dayField, form, nameField } from './field';

/**
 * The cleaning of one line of a job for its service, as somebody wrote it down: by which procedure, when, and where the
 * evidence is. The record says who wrote what; it does not say that anything is clean.
 */
export const LineCleanedSchema = form({
  lineNo: countField('The line number', { min: 1, max: 999 }),
  procedure: nameField('The procedure and its revision', 120),
  onDay: dayField('The day cleaned'),
  evidence: nameField('The evidence: who, how checked, where it is kept', 300),
});
export type LineCleaned = z.infer<typeof LineCleanedSchema>;
