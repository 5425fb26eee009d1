import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { GET } from '@/app/find/route';
import { DIE, must, receive, testShop } from '../support/db';
import { THREADS_JOB } from '../support/kit-shop';
import { sender } from '../support/send';

/** The framework's redirect throws; here it throws where it leads. */
vi.mock('next/navigation', () => ({
  redirect: (to: string) => {
    throw new Error(to);
  },
}));

const holder = globalThis as { [key: symbol]: unknown };
const SERVED = Symbol.for('edgekeep.opened-shop');
beforeEach(() => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  must(sender(db).plan(THREADS_JOB));
  holder[SERVED] = { name: 'shop', db };
});
afterEach(() => {
  delete holder[SERVED];
});

async function leadsTo(query: string): Promise<string> {
  return GET(new Request(`http://shop.local/find${query}`)).catch((error: Error) => error.message);
}

// source: hand. A scan leads to its tool, the number of a line or a job to its page, anything else to the list; nothing that is typed leads out of the house.
it.each([
  ['?id=d-56-o1', '/tools/D-56-01'],
  ['?id=j-7.1', '/plan/lines/J-7.1'],
  ['?id=J-7', '/plan/jobs/J-7'],
  ['?id=J-77', '/tools?find=J-77'],
  ['', '/tools?find='],
  ['?id=%2F%2Fevil.example', '/tools?find=%2F%2FEVIL.EXAMPLE'],
  ['?id=%00', '/tools?find=%00'],
])('%s leads to %s', async (query, address) => {
  expect(await leadsTo(query)).toBe(address);
});

// source: hand. A sign of two halves at the place where the text is cut: one half alone cannot stand in an address.
it('cuts long input between signs, never through one', async () => {
  const address = await leadsTo(`?id=${'a'.repeat(79)}${encodeURIComponent('😀😀')}`);
  expect(address).toBe(`/tools?find=${'A'.repeat(79)}${encodeURIComponent('😀')}`);
});
