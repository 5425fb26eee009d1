import type { Permit } from '../../lib/access/permit';
import type { Entry } from '../../lib/ledger/event';
import type { Refusal, Result } from '../../lib/result';
import { refuse } from '../../lib/result';
import type { LogCut } from '../../lib/shop/command-input';
import { toolKey } from '../../lib/shop/tool-id';
import { decideCut, typedLength } from '../../lib/wear/decide-cut';
import type { Env, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import type { Db } from '../open';
import { decideToolEntry, findFluid } from './tool-entry';

/** How far a device's clock may run ahead before a cut counts as lying in the future. */
const CLOCK_AHEAD_MS_MAX = 26 * 3_600_000;

/** Logs cones or threads cut with a tool: the row, with the exposure that the connection's geometry makes of it. */
export function logCut(
  db: Db,
  permit: Permit<'log-cut'>,
  input: LogCut,
  env: Env,
): Result<Recorded, Refusal> {
  const cutAtMs = input.cutAtMs ?? Math.min(input.deviceAtMs, env.nowMs);
  if (cutAtMs > env.nowMs + CLOCK_AHEAD_MS_MAX) {
    return refuse(
      'future',
      'The day it was cut lies in the future. Check the date, or the clock of this device.',
      'cutAtMs',
    );
  }
  return decideToolEntry(
    db,
    permit,
    input,
    env,
    (entry) => isSameRow(entry, input),
    (ledger, toolId) => {
      const tool = ledger.find('tool', toolId);
      const decision = decideCut({
        input,
        cutAtMs,
        tool,
        part: tool && ledger.find('part', tool.partId),
        connection: ledger.find('connection', input.connectionId),
        material: ledger.find('material', input.materialId),
        fluid: findFluid(db, ledger, input.fluidId),
      });
      return decision.ok ? { ok: true, value: { kind: 'cut-logged', payload: decision.value } } : decision;
    },
  );
}

/** The row as the device sent it: without the moment of a cut that named none, or a thread length on a cone. */
function isSameRow(entry: Entry, input: LogCut): boolean {
  if (entry.kind !== 'cut-logged') return false;
  const { connectionId, materialId, heat, ends, goodEnds, dry, rework, rejects, jobLineId, fluidId } = input;
  const bottle = entry.payload.fluidId ?? '';
  if (toolKey(bottle) !== toolKey(fluidId ?? '')) return false;
  return holdsAll(entry.payload, {
    ...{ connectionId, materialId, heat, ends, goodEnds, dry, rework, rejects, jobLineId },
    ...(input.cutAtMs === null ? {} : { cutAtMs: input.cutAtMs }),
    ...(entry.payload.operation === 'cone' ? {} : { threadLengthTyped: typedLength(input.threadLength) }),
  });
}
