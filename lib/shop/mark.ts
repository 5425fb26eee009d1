import { z } from 'zod';
import { CODE_KINDS } from '../labels/code-kind';
import { dayField, form, yesNoField } from './field';

/** How a tool bears its mark. Common practice, no source. */
export const MARK_WAYS = ['label', 'tag', 'etched', 'laser', 'stamped', 'engraved'] as const;
export type MarkWay = (typeof MARK_WAYS)[number];
export const MARK_WAY_LABEL: Record<MarkWay, string> = {
  label: 'label stuck on',
  tag: 'tag tied on',
  etched: 'etched',
  laser: 'laser marked',
  stamped: 'stamped',
  engraved: 'engraved',
};

/** A tool marked again with the ID it has: the whole content of `tool-marked`. */
export const MarkSchema = form({
  how: z.enum(MARK_WAYS, { error: 'Say how it is marked.' }),
  /** The code beside the ID; null where only the ID is marked. */
  codeKind: z.enum(CODE_KINDS, { error: 'Say which code it bears.' }).nullable(),
  /** Whether the new mark was scanned, or read off and typed, and came back as this tool. */
  readBack: yesNoField('Read back'),
  onDay: dayField('The day'),
});
export type Mark = z.infer<typeof MarkSchema>;
