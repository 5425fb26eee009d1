import { createHash } from 'node:crypto';

const LENGTH_MAX = 64;

/**
 * The ID of a further entry that a command writes beside the one whose ID the device made: the same every time, so that
 * sending the command twice counts once. A long ID is shortened to its digest, so that two never run together.
 */
export function derivedId(entryId: string, suffix: string): string {
  const plain = `${entryId}.${suffix}`;
  if (plain.length <= LENGTH_MAX) return plain;
  return `${createHash('sha256').update(entryId).digest('hex').slice(0, 40)}.${suffix}`;
}
