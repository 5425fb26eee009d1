/**
 * Whether a stored payload holds everything that the device sent. What the server worked out at the time (exposure, the
 * moment of a cut that named none) is not compared: tables and clocks may have moved since.
 */
export function holdsAll(payload: object, sent: object): boolean {
  const kept = payload as Readonly<Record<string, unknown>>;
  return Object.entries(sent).every(
    ([key, value]) => key === 'exposureMicro' || canonical(kept[key]) === canonical(value),
  );
}

/** JSON with keys in order, so that the order in which fields were written says nothing; exposure left out. */
function canonical(value: unknown): string | undefined {
  return JSON.stringify(value, (key, part: unknown) => {
    if (key === 'exposureMicro') return undefined;
    return typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part;
  });
}
