import type { KitRecord } from '../ledger/kit-history';
import { compareText } from '../text/compare-text';
import type { LineFacts } from './shop-facts';

type Kit = Pick<KitRecord, 'id' | 'jobLineId' | 'missingToolIds'>;

/** A kit that should have come back, or came back short. */
export interface LateKit {
  readonly kitId: string;
  readonly jobLineId: string;
  readonly missingToolIds: readonly string[];
  /** Day on which its line was due; null where the job has left the plan. */
  readonly dueOnDay: string | null;
}

/**
 * Kits that ask for somebody: something is being searched for, the due day of the line is over, or its job has left the plan
 * while the kit is still out. Those with something missing first, then the longest overdue, a job that has left the plan
 * counting as longest. For the front page.
 *
 * @example lateKits([], { lines: [], today: '2026-11-25' }) // => []
 */
export function lateKits(
  kitsOut: readonly Kit[],
  { lines, today }: { readonly lines: readonly Pick<LineFacts, 'id' | 'dueOnDay'>[]; readonly today: string },
): LateKit[] {
  const due = new Map(lines.map(({ id, dueOnDay }) => [id, dueOnDay]));
  return kitsOut
    .map(({ id, jobLineId, missingToolIds }) => ({
      ...{ kitId: id, jobLineId, missingToolIds },
      dueOnDay: due.get(jobLineId) ?? null,
    }))
    .filter(
      ({ missingToolIds, dueOnDay }) => missingToolIds.length > 0 || dueOnDay === null || dueOnDay < today,
    )
    .sort((a, b) => rank(a) - rank(b) || compareText(a.dueOnDay ?? '', b.dueOnDay ?? ''));
}

function rank({ missingToolIds }: LateKit): number {
  return missingToolIds.length > 0 ? 0 : 1;
}
