import type { Permit } from '../../lib/access/permit';
import { hasDayCome } from '../../lib/gauge/decide-check';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Calibration } from '../../lib/shop/calibration';
import type { RecordCalibration } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/**
 * Records a gauge's calibration: passed with its next due day, or failed and so quarantined in the same entry. What the
 * certificate does not state is left out of the entry.
 */
export function recordCalibration(
  db: Db,
  permit: Permit<'record-calibration'>,
  input: RecordCalibration,
  env: Env,
): Result<Recorded, Refusal> {
  const content = { kind: 'gauge-calibrated', payload: calibrationOf(input) } as const;
  return recordToolEntry(db, permit, input, env, content, () =>
    hasDayCome(input.onDay, env.nowMs) ? ok(null) : refuse('day', 'That day has not come yet.', 'onDay'),
  );
}

/** The content of the entry: only what was stated. */
function calibrationOf(input: RecordCalibration): Calibration {
  const { onDay, result, dueOnDay, certificate, laboratory, asFound, adjusted, features, rule } = input;
  return {
    ...{ onDay, result, dueOnDay, certificate },
    ...(laboratory === undefined || laboratory === '' ? {} : { laboratory }),
    ...(asFound === undefined ? {} : { asFound }),
    ...(adjusted === undefined ? {} : { adjusted }),
    ...(features === undefined || features.length === 0 ? {} : { features }),
    ...(rule === undefined ? {} : { rule }),
  };
}
