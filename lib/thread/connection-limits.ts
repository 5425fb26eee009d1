import type { Connection } from '../shop/noun';
import { inToMm } from '../units/inch-mm';
import { checkThread } from './check-thread';
import { EXTERNAL_CLASSES, type ExternalClass, type ExternalLimits, externalThreadLimits } from './limits';
import { bestWireMm, overWiresMm } from './three-wire';

/** A row of the size table as its thread is measured. */
export interface ConnectionLimits {
  readonly threadClass: ExternalClass;
  readonly limits: ExternalLimits;
  readonly bestWireMm: number;
  /** Over the best wires, at the limits of the pitch diameter. */
  readonly overWiresMaxMm: number;
  readonly overWiresMinMm: number;
}

/**
 * Limits of size of a connection's thread, with its best wire and the limits over it. Undefined where the row's class is none that
 * the formulas know (1A, 2A, 3A), or its thread lies outside them: then the fitting maker's manual alone says.
 */
export function connectionLimits(
  connection: Pick<Connection, 'odNum' | 'odDen' | 'tpi' | 'threadClass'>,
): ConnectionLimits | undefined {
  const named = connection.threadClass.trim().toUpperCase();
  const threadClass = EXTERNAL_CLASSES.find((known) => known === named);
  const { odNum, odDen, tpi } = connection;
  const thread = checkThread({ sizeIn: { num: odNum, den: odDen }, tpi });
  if (threadClass === undefined || !thread.ok) return undefined;
  const limits = externalThreadLimits(thread.value, threadClass);
  const wireMm = bestWireMm(tpi);
  const over = (pitchIn: number) => overWiresMm({ pitchDiameterMm: inToMm(pitchIn), tpi, wireMm });
  return {
    threadClass,
    limits,
    bestWireMm: wireMm,
    overWiresMaxMm: over(limits.pitchMaxIn),
    overWiresMinMm: over(limits.pitchMinIn),
  };
}
