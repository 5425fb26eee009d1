import { inject } from 'vitest';

/** Where this worker's demo shop is served, e.g. http://127.0.0.1:40123. No other file writes to it meanwhile. */
export function shopAddress(): string {
  const address = inject('addresses')[Number(process.env.VITEST_POOL_ID) - 1];
  if (address === undefined) throw new Error(`There is no server for worker ${process.env.VITEST_POOL_ID}.`);
  return address;
}
