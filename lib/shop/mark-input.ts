import type { z } from 'zod';
import { stamped } from './entry-fields';
import { dayField, form, textField } from './field';
import { MarkSchema } from './mark';

/** A tool marked again, as it is typed: what the new mark read as comes along, and is held against the tool. */
export const MarkToolInput = form({
  ...stamped,
  toolId: textField('The tool ID', 40),
  reason: textField('The reason', 300),
  how: MarkSchema.shape.how,
  codeKind: MarkSchema.shape.codeKind,
  readAs: textField('What the mark reads as', 80),
  onDay: dayField('The day'),
});
export type MarkTool = z.output<typeof MarkToolInput>;
