/** What a spreadsheet program could take for the start of a formula, in full width too, blanks before it or none; and the apostrophe, which marks a guarded cell. */
const GUARDED = /^(?:[\t\r\n]|\s*[=+\-@＝＋－＠'])/;

/** The same behind what some spreadsheet programs take for the end of a cell or of a row, quoted or not. */
const GUARDED_INSIDE = /([;\t\r\n]\s*)(?='*[=+\-@＝＋－＠])/g;
const GUARD_INSIDE = /([;\t\r\n]\s*)'(?='*[=+\-@＝＋－＠])/g;

/**
 * A cell made safe to open in a spreadsheet program: one that begins like a formula gets an apostrophe in front, so it is
 * shown as text. So does what follows a semicolon, a tab or a line break within it: a program that is set to part cells at
 * semicolons sees quotation marks in the middle of its cells, which then hold nothing together. `plainCell` takes it all off
 * again. Source: OWASP, CSV injection (signs, and separators within a cell).
 * @example guardCell('=1+1') // => "'=1+1"
 * @example guardCell('a;=1+1') // => "a;'=1+1"
 */
export function guardCell(text: string): string {
  const inside = text.replace(GUARDED_INSIDE, "$1'");
  return GUARDED.test(text) ? `'${inside}` : inside;
}

/**
 * A cell as it was meant: line breaks and tabs become a space, spaces at the ends fall away, and so does one leading
 * apostrophe, by which spreadsheets mark text, and those that guard what follows a semicolon.
 * @example plainCell(" '-LH ") // => "-LH"
 */
export function plainCell(raw: string): string {
  const bare = raw.replace(GUARD_INSIDE, '$1');
  const text = (/[\t\n\r]/.test(bare) ? bare.replace(/[\t\n\r]+/g, ' ') : bare).trim();
  return text.startsWith("'") ? text.slice(1).trim() : text;
}
