import 'server-only';
import { randomUUID } from 'node:crypto';
import { shopName } from '@/db/client';
import { nowMs } from './clock';

/** What a form needs to be sent twice and count once: its entry ID and a clock. A device with scripts replaces both. */
export interface Stamp {
  readonly entryId: string;
  readonly deviceAtMs: number;
  /** The shop that the page showed: what is filled in for one shop must not be entered in another. */
  readonly shop: string;
}

export function newStamp(): Stamp {
  return { entryId: randomUUID(), deviceAtMs: nowMs(), shop: shopName() };
}
