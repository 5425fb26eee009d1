import { z } from 'zod';
import { form, nameField, textField } from './field';

/**
 * Something entered at a bench without network that the record could not take when it arrived: the whole content of
 * `conflict-raised`. Nothing that somebody entered is lost; a person settles it.
 */
export const ConflictSchema = form({
  toolId: textField('The tool ID', 40),
  /** What was entered, in shop words. */
  what: textField('What was entered', 300),
  /** Why the record could not take it. */
  sentence: textField('Why', 500),
  /** The entry as the device sent it, as JSON. */
  sent: textField('The entry', 20_000),
});
export type Conflict = z.infer<typeof ConflictSchema>;

/** How a conflict was settled: entered by hand in another way, or dropped. The whole content of `conflict-settled`. */
export const ConflictSettledSchema = form({
  how: z.enum(['entered', 'dropped'], { error: 'Say whether it was entered or dropped.' }),
  note: nameField('What was done', 300),
});
