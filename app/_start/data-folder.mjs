import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Refused } from './refused.mjs';

/** Makes the data folder if need be and proves that it can be written, by writing. */
export function ensureDataFolder(dataDir) {
  const probe = join(dataDir, `.write-test-${process.pid}`);
  try {
    mkdirSync(dataDir, { recursive: true });
    writeFileSync(probe, '');
    rmSync(probe);
  } catch (error) {
    throw refusalFor(error, dataDir);
  }
}

function refusalFor(error, dataDir) {
  if (error.code === 'EEXIST' || error.code === 'ENOTDIR') return notAFolder(dataDir);
  if (error.code === 'ENOSPC') return new Refused(`The disk holding the data folder ${dataDir} is full.`);
  return new Refused(
    `The data folder ${dataDir} cannot be written (${error.code}): make it writable, or choose another with --data DIR.`,
  );
}

function notAFolder(dataDir) {
  return new Refused(
    `The data folder ${dataDir} is a file or lies below one: choose another with --data DIR.`,
  );
}
