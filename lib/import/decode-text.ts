import { ok, type Result, refuse } from '../result';

/** The largest file that is read: 50 MB. */
export const FILE_BYTES_MAX = 50 * 1024 * 1024;

/**
 * The text of an uploaded file. Only UTF-8 is read, with or without a byte order mark; whatever else it seems to be is
 * said in a sentence: UTF-16, a workbook or another binary file, too large, empty, bytes that are not UTF-8.
 */
export function decodeText(bytes: Uint8Array): Result<string> {
  if (bytes.length > FILE_BYTES_MAX)
    return refuse('too-large', 'This file is larger than 50 MB. Split it into several files.');
  if (bytes.length === 0) return refuse('empty', 'This file is empty.');
  if (looksLikeUtf16(bytes))
    return refuse('utf-16', 'This file is written in UTF-16. Save it again as CSV in UTF-8.');
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03)
    return refuse(
      'workbook',
      'This is a workbook or a zip file, not a CSV file. Save the sheet as CSV in UTF-8.',
    );
  if (bytes.includes(0)) return refuse('binary', 'This is not a text file. Save the sheet as CSV in UTF-8.');
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return refuse('not-utf-8', 'This file is not written in UTF-8. Save it again as CSV in UTF-8.');
  }
}

/** A UTF-16 byte order mark, or a first line in which every other byte is nought. */
function looksLikeUtf16(bytes: Uint8Array): boolean {
  const [first = 0, second = 0] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true;
  const start = bytes.subarray(0, 200);
  const noughts = (parity: number) => start.filter((byte, at) => at % 2 === parity && byte === 0).length;
  const [even, odd] = [noughts(0), noughts(1)];
  return start.length >= 8 && Math.max(even, odd) > 0.3 * start.length && Math.min(even, odd) === 0;
}
