import type { ImportKind } from './column';
import { hash128 } from './hash128';

/**
 * Gives every row of one file its entry ID, made from what the row says and from which of several equal rows it is: the
 * same file again, or grown by some rows, gives the rows that it shares the same IDs, in whatever order they stand.
 */
export function makeRowIds(kind: ImportKind): (content: string) => string {
  const seen = new Map<string, number>();
  return (content) => {
    const hash = hash128(`${kind}\n${content}`);
    const occurrence = (seen.get(hash) ?? 0) + 1;
    seen.set(hash, occurrence);
    return `f-${occurrence === 1 ? hash : hash128(`${hash}\n${occurrence}`)}`;
  };
}
