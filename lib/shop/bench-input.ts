import { z } from 'zod';
import { LogCutInput } from './command-input';
import { markedIdField, stamped } from './entry-fields';
import { form, listField, measureField, textField } from './field';
import { RETURN_CONDITIONS } from './noun';

/** Why somebody stopped: one tap, no blame. Common practice, no source. */
export const STOPS = [
  { code: 'broken', label: 'Broken', pieces: true },
  { code: 'chipped', label: 'Chipped', pieces: true },
  { code: 'hard', label: 'Turns hard', pieces: false },
  { code: 'dropped', label: 'Dropped', pieces: false },
] as const;
export type Stop = (typeof STOPS)[number]['code'];

const aboutScanned = { ...stamped, toolId: markedIdField() };
const CutEntry = LogCutInput.extend({ kind: z.literal('cut') });
const StopEntry = form({
  kind: z.literal('stop'),
  ...aboutScanned,
  how: z.enum(
    STOPS.map(({ code }) => code),
    { error: 'Say why it was stopped.' },
  ),
});

/** Taken out of the crib for a line by whoever stands at the bench. */
const TakeEntry = form({
  kind: z.literal('take'),
  ...aboutScanned,
  jobLineId: textField('The job line', 80).min(1, 'Say which line of which job it is for.'),
});

/** Given back, in the condition that was tapped. */
const GiveBackEntry = form({
  kind: z.literal('give-back'),
  ...aboutScanned,
  condition: z.enum(RETURN_CONDITIONS, { error: 'Say in what condition it came back.' }),
});

/** One entry that a bench made, perhaps without network. */
export const BenchEntrySchema = z.discriminatedUnion(
  'kind',
  [CutEntry, StopEntry, TakeEntry, GiveBackEntry],
  {
    error: 'This entry cannot be read.',
  },
);
export type BenchEntry = z.output<typeof BenchEntrySchema>;

/** What a bench sends: its entries in the order in which they were made, and how far its clock is off. */
export const BenchBatchSchema = form({
  /** Server clock less device clock, as the device last saw it. Added to the moments of the entries. */
  clockBehindMs: measureField('The clock’s error', { min: -1e12, max: 1e12 }),
  entries: listField('The entries', z.unknown(), 500),
});
export type BenchBatch = z.output<typeof BenchBatchSchema>;
