/** The name of the bench's store on the device. */
export const BENCH_DB_NAME = 'edgekeep-bench';

/**
 * Whether this device has ever been a bench. Asked without making the store; a browser that cannot tell is taken for one.
 * Where the browser lets pages keep nothing, there is nothing to send either.
 */
export async function wasBench(): Promise<boolean> {
  try {
    if (typeof indexedDB.databases !== 'function') return true;
    return (await indexedDB.databases()).some(({ name }) => name === BENCH_DB_NAME);
  } catch {
    return false;
  }
}
