/** What can be stamped or engraved and still be read through oil: 2 to 16 of A–Z, 0–9 and dash, no dash at an end. */
const MARKABLE = /^(?=.{2,16}$)[A-Z0-9](?:-?[A-Z0-9])+$/;
/** Hyphens, dashes and minus signs that keyboards, scanners and spreadsheets put in place of the plain dash. */
const DASHES_AND_SPACES = /[\s\u2010-\u2015\u2212\ufe58\ufe63\uff0d-]+/g;

/**
 * A typed or scanned ID as it would be marked: upper case, one plain dash for any run of dashes and spaces, none at the
 * ends. Letters stay as typed; use `toolKey` to look up.
 * @example tidyToolId(' d–38 11 ') // => "D-38-11"
 */
export function tidyToolId(typed: string): string {
  return typed.normalize('NFKC').trim().toUpperCase().replace(DASHES_AND_SPACES, '-').replace(/^-|-$/g, '');
}

/**
 * The key under which a marked ID is looked up: tidied, and O read as 0 and I as 1, since an oily mark cannot tell them
 * apart. Two tools must never share a key.
 * @example toolKey('bdy-o1') // => "BDY-01"
 */
export function toolKey(id: string): string {
  return tidyToolId(id).replaceAll('O', '0').replaceAll('I', '1');
}

/**
 * Whether an ID can be marked as it stands: 2 to 16 characters of A–Z, 0–9 and dash, beginning and ending with a letter
 * or figure, no two dashes together.
 * @example isMarkable('D-38-11') // => true
 */
export function isMarkable(id: string): boolean {
  return MARKABLE.test(id);
}

/** The existing ID that a proposed one would be mistaken for (same key), or undefined when it is free. */
export function clashingToolId(proposedId: string, existingIds: Iterable<string>): string | undefined {
  const key = toolKey(proposedId);
  for (const id of existingIds) if (toolKey(id) === key) return id;
  return undefined;
}
