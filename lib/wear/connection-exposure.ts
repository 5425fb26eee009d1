import { ok, type Refusal, type Result, refuse } from '../result';
import { connectionText } from '../shop/connection-text';
import type { Connection } from '../shop/noun';
import type { CutOperation } from '../shop/vocabulary';
import { inToMm } from '../units/inch-mm';
import { toMicro } from '../units/micro';
import { baseExposurePerEnd, exposureAmount } from './exposure';

/**
 * What one end of a connection in the shop's table costs an edge: turns for a thread, mm³ for a cone, before any
 * material factor. `lengthMm` where the thread was cut to another length than the connection's own.
 */
export function exposureOfEnd(cut: {
  readonly operation: CutOperation;
  readonly connection: Connection;
  readonly lengthMm?: number | null;
}): number {
  const { operation, connection, lengthMm } = cut;
  const { tpi, threadLengthMm, coneAngleDeg, noseMm } = connection;
  const odMm = inToMm(connection.odNum / connection.odDen);
  const shape = { tpi, threadLengthMm, odMm, noseMm, coneAngleDeg };
  return exposureAmount(
    baseExposurePerEnd({
      op: operation,
      connection: shape,
      lengthMm: operation === 'thread' ? (lengthMm ?? undefined) : undefined,
    }),
  );
}

/** The same for a row of `ends`, in whole millionths, as the ledger keeps it: sums of rows are then exact. */
export function exposureMicroOf(row: {
  readonly operation: CutOperation;
  readonly connection: Connection;
  readonly lengthMm: number | null;
  readonly ends: number;
}): number {
  return toMicro(exposureOfEnd(row) * row.ends);
}

/** The most that one row may cost an edge, turns or mm³: far above any day's work, so sums stay exact. */
const ROW_MAX = 1e9;

/** The same for figures from outside: a row beyond what the record can add up exactly is refused. */
export function rowExposureMicro(row: Parameters<typeof exposureMicroOf>[0]): Result<number, Refusal> {
  if (exposureOfEnd(row) * row.ends <= ROW_MAX) return ok(exposureMicroOf(row));
  return refuse(
    'exposure',
    `${row.ends} ends of ${connectionText(row.connection)} are more than one row can hold; check the size and the ends.`,
    'ends',
  );
}
