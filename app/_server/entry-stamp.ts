import 'server-only';
import { randomUUID } from 'node:crypto';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { shopName } from '@/db/client';
import { nowMs } from './clock';

/** What a form needs to be sent twice and count once: its entry ID and a clock. A device with scripts replaces both. */
export function newStamp(): EntryStamp {
  return { entryId: randomUUID(), deviceAtMs: nowMs(), shop: shopName() };
}
