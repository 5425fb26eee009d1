import type { AppliedRule } from '../shop/acceptance';
import type { AcceptanceRule } from '../shop/acceptance-rule';

/** Where a rule may be written: on the job, in the row of the size table, with the shop. */
export interface RulesWritten {
  readonly job: AcceptanceRule | undefined;
  readonly sizeNotGoTurnsMax: number | null;
  readonly shop: AcceptanceRule | undefined;
}

/** Threads to be seen between collar and cone. */
export interface ExposedThreads {
  readonly min: number;
  readonly max: number;
}

/** Where nothing is written. Common practice, no source; the fitting maker's manual rules. */
export const USUAL_EXPOSED_THREADS: ExposedThreads = { min: 1, max: 2 };

/**
 * Which rule holds for NOT GO: the job's own, else the row of the size table, else the shop's. Null where none of them
 * says how far the ring may run on: then nobody may assume one. Source: the order is common practice, no source.
 */
export function appliedRule({ job, sizeNotGoTurnsMax, shop }: RulesWritten): AppliedRule | null {
  if (job !== undefined && job.notGoTurnsMax !== null)
    return { notGoTurnsMax: job.notGoTurnsMax, whose: job.whose, source: 'job' };
  if (sizeNotGoTurnsMax !== null)
    return { notGoTurnsMax: sizeNotGoTurnsMax, whose: 'the size table', source: 'size' };
  if (shop !== undefined && shop.notGoTurnsMax !== null)
    return { notGoTurnsMax: shop.notGoTurnsMax, whose: shop.whose, source: 'shop' };
  return null;
}

/** How many threads are to be seen behind the cone: as the job says, else the shop, else one to two. */
export function exposedThreadsRule({ job, shop }: Pick<RulesWritten, 'job' | 'shop'>): ExposedThreads {
  const written = job ?? shop;
  return written === undefined
    ? USUAL_EXPOSED_THREADS
    : { min: written.exposedThreadsMin, max: written.exposedThreadsMax };
}

/**
 * Whose rule it is, in words.
 * @example ruleText({ notGoTurnsMax: 2, whose: 'drawing 4471', source: 'job' }) // => "2 turns by drawing 4471, written on the job"
 */
export function ruleText({ notGoTurnsMax, whose, source }: AppliedRule): string {
  const turns = `${notGoTurnsMax} ${notGoTurnsMax === 1 ? 'turn' : 'turns'}`;
  if (source === 'size') return `${turns} by ${whose}`;
  return `${turns} by ${whose}, written ${source === 'job' ? 'on the job' : 'in the shop’s settings'}`;
}
