import { randomBytes } from 'node:crypto';
import { chmodSync, linkSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

const ownerOnly = 0o600;

/** What a private file holds, or undefined when there is none. Rights that a copy left too wide are narrowed again. */
export function readPrivate(path) {
  try {
    const text = readFileSync(path, 'utf8');
    chmodSync(path, ownerOnly);
    return text;
  } catch (error) {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  }
}

/** Writes a file that only its owner may read, whole or not at all, in the place of what was there. */
export function writePrivate(path, text) {
  withDraft(path, text, (draft) => renameSync(draft, path));
}

/** Writes it only where there is none yet; gives back what stands there afterwards, perhaps another start's. */
export function claimPrivate(path, text) {
  withDraft(path, text, (draft) => {
    try {
      linkSync(draft, path);
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
  });
  return readPrivate(path);
}

function withDraft(path, text, place) {
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const draft = `${path}.${randomBytes(6).toString('hex')}`;
  try {
    writeFileSync(draft, text, { mode: ownerOnly, flag: 'wx' });
    place(draft);
  } finally {
    rmSync(draft, { force: true });
  }
}
