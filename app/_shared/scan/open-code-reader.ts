import type { CodeReader } from './code-reader';
import { openDetectorReader } from './detector-reader';
import { openWorkerReader } from './worker-reader';

/** The browser's own reader where it knows all three codes, else ours. Throws when ours cannot be loaded. */
export async function openCodeReader(): Promise<CodeReader> {
  return (await openDetectorReader()) ?? (await openWorkerReader());
}
