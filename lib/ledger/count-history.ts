import { ok, type Refusal, type Result, refuse } from '../result';
import type { StockCount } from '../shop/stock-count';
import type { Entry } from './event';

/** A stock-take as it was entered. */
export interface CountRecord extends StockCount {
  readonly countedAtMs: number;
  readonly countedById: string;
}

/** A stock-take is one entry; another count is another stock-take. */
export function evolveCount(count: CountRecord | undefined, entry: Entry): Result<CountRecord, Refusal> {
  if (entry.kind !== 'stock-counted')
    return refuse('kind', `An entry "${entry.kind}" cannot be about a stock-take.`);
  if (count !== undefined) return refuse('exists', 'This stock-take is already in the record.');
  return ok({ ...entry.payload, countedAtMs: entry.serverAtMs, countedById: entry.actorId });
}
