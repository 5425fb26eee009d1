/** What a run of `npm test` counted. Lint, types and build count as one each. */
export function emptyTally() {
  return { passed: 0, failed: 0, skipped: 0 };
}

/** Adds a step's outcome and prints it. A step that counted nothing at all has failed. */
export function record(tally, name, outcome) {
  const nothing = outcome.passed + outcome.failed + outcome.skipped === 0;
  const counted = nothing ? { ...outcome, failed: 1, why: outcome.why ?? 'nothing was run' } : outcome;
  for (const key of ['passed', 'failed', 'skipped']) tally[key] += counted[key];
  console.log(`\n${name}: ${summary(counted)}${counted.why ? ` (${counted.why})` : ''}`);
}

/** The last line of `npm test`. */
export function lastLine(tally) {
  return summary(tally);
}

function summary({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
