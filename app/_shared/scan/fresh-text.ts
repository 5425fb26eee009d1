/** As long as a label stays in the picture, and a little after, it is one scan. */
const ONE_SCAN_MS = 2500;

/** Tells a code newly held before the camera from one that is still there. */
export function freshText(): (text: string | undefined, atMs: number) => string | undefined {
  let last: string | undefined;
  let seenAtMs = 0;
  return (text, atMs) => {
    const tidy = text?.trim();
    if (tidy === undefined || tidy === '') return undefined;
    const isFresh = tidy !== last || atMs - seenAtMs > ONE_SCAN_MS;
    last = tidy;
    seenAtMs = atMs;
    return isFresh ? tidy : undefined;
  };
}
