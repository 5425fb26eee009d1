import { entryIdField, momentField, textField } from './field';

/**
 * What the device makes of every entry: its ID, by which the same entry sent twice counts once, and its own clock, which
 * the server keeps but never orders by.
 */
export const stamped = {
  entryId: entryIdField,
  deviceAtMs: momentField('The device’s clock'),
};

/** An entry with a note beside it; none is needed. */
export const entered = { ...stamped, reason: textField('The note', 300).default('') };

/**
 * The ID of something marked, scanned or typed: never empty. `what` names it in the sentence that asks for it.
 * @example markedIdField('the gauge’s ID').safeParse('').success // => false
 */
export const markedIdField = (what = 'a tool ID', name = 'The tool ID') =>
  textField(name, 40).min(1, `Scan or type ${what}.`);

/** An entry about one marked tool. */
export const aboutTool = { ...entered, toolId: markedIdField() };
