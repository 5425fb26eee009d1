import { statSync } from 'node:fs';
import { basename } from 'node:path';

/** A file that is held open, and what told it from any other when it was opened. */
export interface OpenFile {
  readonly path: string;
  readonly mark: string | undefined;
}

/** The open file was taken away, or another put in its place: what was written now would be lost. */
export class ShopFileGoneError extends Error {
  override name = 'ShopFileGoneError';
}

/** A file as it lies on the disk now, to be recognised later. */
export function markFile(path: string): OpenFile {
  return { path, mark: markOf(path) };
}

/** SQLite goes on writing to a file that was removed: every entry would be acknowledged, and gone at the next start. */
export function requireInPlace({ path, mark }: OpenFile): void {
  if (markOf(path) === mark) return;
  throw new ShopFileGoneError(
    `Nothing was entered: ${basename(path)} in the data folder was moved, removed or replaced while Edgekeep had it open. Stop Edgekeep, put the right file there, and start it again.`,
  );
}

function markOf(path: string): string | undefined {
  const stats = statSync(path, { bigint: true, throwIfNoEntry: false });
  return stats === undefined ? undefined : `${stats.dev} ${stats.ino}`;
}
