/** The code reader that is served; its number stands in the addresses, so that a device keeps each version for good. */
export const SCAN_READER_VERSION = '3.1.4';

export const SCAN_WORKER = `/bench/scan-worker.js?v=${SCAN_READER_VERSION}`;

/**
 * Everything that reading codes needs where the browser cannot do it by itself. The addresses lie below /bench, where the
 * worker that keeps the bench for the dead spot reaches them.
 */
export const SCAN_PARTS: readonly string[] = [
  SCAN_WORKER,
  `/bench/scan/${SCAN_READER_VERSION}/reader.js`,
  `/bench/scan/${SCAN_READER_VERSION}/reader.wasm`,
];
