import { afterEach, expect, it, vi } from 'vitest';
import { shellState } from '@/app/_server/shell-state';
import { raiseConflict, settleConflict } from '@/db/commands/keep-conflicts';
import type { Actor } from '@/lib/access/actor';
import { SettleConflictInput } from '@/lib/shop/kit-input';
import { entered, may, must, testShop } from '../support/db';

vi.mock('next/headers', () => ({ cookies: async () => ({ get: () => undefined }) }));

/** Where db/client keeps the shop being served. */
const holder = globalThis as { [key: symbol]: unknown };
const SERVED = Symbol.for('edgekeep.opened-shop');
afterEach(() => {
  delete holder[SERVED];
});

const LEAD: Actor = { personId: 'lead-1', name: 'Lead-1', role: 'lead' };
const env = { nowMs: Date.now() };

// source: hand. Two raised, one settled: one is left.
it('counts what benches entered and nobody has settled', async () => {
  const db = testShop();
  holder[SERVED] = { name: 'shop', db };
  expect((await shellState()).toSettle).toBe(0);
  for (const id of ['stop-000001', 'stop-000002']) {
    const conflict = {
      what: 'D-56-01 stopped: hard',
      toolId: 'D-56-01',
      sentence: 'It is scrapped.',
      sent: '{}',
    };
    must(raiseConflict(db, may('log-cut', LEAD), { id, deviceAtMs: env.nowMs, conflict }, env));
  }
  expect((await shellState()).toSettle).toBe(2);
  const settled = { ...entered(), conflictId: 'stop-000001', how: 'dropped', note: 'counted twice' };
  must(settleConflict(db, may('settle-conflict', LEAD), SettleConflictInput.parse(settled), env));
  expect((await shellState()).toSettle).toBe(1);
});
