import 'server-only';
import { randomUUID } from 'node:crypto';
import { nowMs } from './clock';

/** What a form needs to be sent twice and count once: its entry ID and a clock. A device with scripts replaces both. */
export interface Stamp {
  readonly entryId: string;
  readonly deviceAtMs: number;
}

export function newStamp(): Stamp {
  return { entryId: randomUUID(), deviceAtMs: nowMs() };
}
