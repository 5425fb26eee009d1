import { endsToMake } from './plan-facts';
import type { LineFacts } from './shop-facts';

/** What still keeps a line from being released. */
export type ReleaseHold =
  | { readonly kind: 'ends-to-make'; readonly ends: number }
  /** Made, and not accepted yet. */
  | { readonly kind: 'ends-to-accept'; readonly ends: number }
  /** Accepted, and a gauge is not recorded or a recall is open on it. */
  | { readonly kind: 'evidence-open'; readonly ends: number }
  /** Something broke off these tools while they were out for the line, and is still searched for. */
  | { readonly kind: 'pieces-owed'; readonly toolIds: readonly string[] }
  /** For oxygen: cleaning by the approved procedure is not written down. */
  | { readonly kind: 'cleaning-record' };

/**
 * Whether the evidence for releasing a line is complete: every end made, accepted with its gauges on record, none under
 * recall, no piece of a broken tool still searched for, and for oxygen the cleaning written down. The third answer beside "can cut" and "can accept". It speaks of
 * records only: whether an end is fit for its use, the owner's code and competent people say. In the order in which the
 * holds are cleared; empty when the record is complete. Work that is not coned or threaded here asks for no acceptance.
 */
export function releaseHolds(line: LineFacts): ReleaseHold[] {
  const holds: ReleaseHold[] = [];
  const toMake = endsToMake(line);
  const made = line.ends - toMake;
  const cuts = line.operations.some((operation) => operation !== 'assemble');
  if (cuts) {
    const accepted = Math.min(line.acceptedEnds ?? 0, line.ends);
    const proven = Math.min(line.releasableEnds ?? 0, accepted);
    if (toMake > 0) holds.push({ kind: 'ends-to-make', ends: toMake });
    if (made > accepted) holds.push({ kind: 'ends-to-accept', ends: made - accepted });
    if (accepted > proven) holds.push({ kind: 'evidence-open', ends: accepted - proven });
  }
  const { piecesOwed: toolIds = [] } = line;
  if (toolIds.length > 0) holds.push({ kind: 'pieces-owed', toolIds });
  const isClean = line.cleanedOnDay !== null && line.cleanedOnDay !== undefined;
  if (line.duty === 'oxygen' && !isClean) holds.push({ kind: 'cleaning-record' });
  return holds;
}

/** How many ends of a line could be released now: none while pieces of a tool that broke on it are searched for. */
export function releasableNow(line: Pick<LineFacts, 'releasableEnds' | 'piecesOwed'>): number {
  return (line.piecesOwed ?? []).length > 0 ? 0 : (line.releasableEnds ?? 0);
}
