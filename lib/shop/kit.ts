import { z } from 'zod';
import { dayField, form, keyField, listField, nameField, textField, yesNoField } from './field';
import { ROLES } from './vocabulary';

/** One item of a kit: which marked thing went out, and what for. */
const KitItemSchema = form({
  toolId: textField('The tool ID', 40).min(1, 'Scan or type a tool ID.'),
  role: z.enum(ROLES, { error: 'The kind of part is not one we know.' }),
});

/** A set of items issued together for one line, to one person, at one bench: the whole content of `kit-issued`. */
export const KitSchema = form({
  jobLineId: textField('The job line', 80).min(1, 'Say which line of which job the kit is for.'),
  toPersonId: keyField('Who it goes to'),
  bench: textField('The bench', 24),
  items: listField('The items', KitItemSchema, 40).min(1, 'Scan at least one item into the kit.'),
});
export type Kit = z.infer<typeof KitSchema>;

/** Items of a kit that did not come back, and the search for them: the whole content of `kit-search-opened`. */
export const KitSearchSchema = form({
  toolIds: listField('The missing items', textField('The tool ID', 40), 40).min(1, 'Say what is missing.'),
  lastSeen: textField('Where it was last seen', 200),
});

/** A kit put away: everything back, or the rest lost with somebody's approval. The whole content of `kit-closed`. */
export const KitClosedSchema = form({
  how: z.enum(['complete', 'lost-approved'], { error: 'Say whether it is complete or closed with a loss.' }),
  lostToolIds: listField('The lost items', textField('The tool ID', 40), 40),
});

/** A shared body, a vise adapter or any tool kept for a line until a day: the whole content of `tool-reserved`. */
export const ReservationSchema = form({
  jobLineId: textField('The job line', 80).min(1, 'Say which line of which job it is kept for.'),
  untilDay: dayField('The last day it is kept'),
  /** The shop’s day when it was kept; absent in entries from before it was written down. */
  onDay: dayField('The day').optional(),
});

/** After a breakage: were all pieces found, and where? The whole content of `pieces-accounted`. */
export const PiecesSchema = form({
  allFound: yesNoField('All pieces found'),
  where: nameField('Where they were found or looked for', 200),
});

/** A split die opened or closed a touch: the whole content of `die-adjusted`. It never restores life. */
export const AdjustmentSchema = form({
  direction: z.enum(['opened', 'closed'], { error: 'Say whether the die was opened or closed.' }),
  amount: textField('How far', 60),
  onDay: dayField('The day'),
});

/**
 * The first end cut after a regrind or an adjustment: the whole content of `first-off-checked`. Passed with its gauges named;
 * older entries may name none. `not-gauged`: somebody looked at it, and it stays owed.
 */
export const FirstOffSchema = form({
  result: z.enum(['pass', 'fail', 'not-gauged'], { error: 'Say whether the first-off passed.' }),
  onDay: dayField('The day'),
  gaugeIds: listField('The gauges', textField('The gauge ID', 40), 10),
});
