import type { GaugeResult } from '../shop/acceptance';
import type { CutOperation, Role } from '../shop/vocabulary';

/** What a checked operation asks for. The cone by its gauge, the thread by both rings. Common practice, no source. */
const REQUIRED: Record<CutOperation, readonly Role[]> = {
  cone: ['cone-gauge'],
  thread: ['go-ring', 'not-go-ring'],
};

/** The gauges that must be recorded before ends with these operations can be released, in the order of use. */
export function requiredGauges(operations: readonly CutOperation[]): Role[] {
  return (['cone', 'thread'] as const).flatMap((operation) =>
    operations.includes(operation) ? REQUIRED[operation] : [],
  );
}

/** Those of them that nobody recorded. */
export function missingGauges(
  operations: readonly CutOperation[],
  gauges: readonly Pick<GaugeResult, 'role' | 'verdict'>[],
): Role[] {
  const used = new Set(gauges.filter(({ verdict }) => verdict !== 'not-used').map(({ role }) => role));
  return requiredGauges(operations).filter((role) => !used.has(role));
}
