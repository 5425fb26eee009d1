/** What a spreadsheet program could take for the start of a formula, in full width too; and the apostrophe, which marks a guarded cell. */
const GUARDED = /^[=+\-@＝＋－＠\t\r\n']/;

/**
 * A cell made safe to open in a spreadsheet program: one that begins like a formula gets an apostrophe in front, so it is
 * shown as text. `plainCell` takes it off again. Source: common advice against formula injection in CSV files.
 * @example guardCell('=1+1') // => "'=1+1"
 */
export function guardCell(text: string): string {
  return GUARDED.test(text) ? `'${text}` : text;
}

/**
 * A cell as it was meant: line breaks and tabs become a space, spaces at the ends fall away, and so does one leading
 * apostrophe, by which spreadsheets mark text.
 * @example plainCell(" '-LH ") // => "-LH"
 */
export function plainCell(raw: string): string {
  const text = (/[\t\n\r]/.test(raw) ? raw.replace(/[\t\n\r]+/g, ' ') : raw).trim();
  return text.startsWith("'") ? text.slice(1).trim() : text;
}
