/** Throws when something that the code itself guarantees is not so: a bug, never a user's mistake. */
export function invariant(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(`invariant broken: ${message}`);
}
