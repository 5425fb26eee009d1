import type { Permit } from '../../lib/access/permit';
import type { Refusal, Result } from '../../lib/result';
import type { RecordCalibration } from '../../lib/shop/command-input';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { recordToolEntry } from './tool-entry';

/** Records a gauge's calibration: passed with its next due day, or failed and so quarantined in the same entry. */
export function recordCalibration(
  db: Db,
  permit: Permit<'record-calibration'>,
  input: RecordCalibration,
  env: Env,
): Result<Recorded, Refusal> {
  const { onDay, result, dueOnDay, certificate } = input;
  const payload = { onDay, result, dueOnDay, certificate };
  return recordToolEntry(db, permit, input, env, { kind: 'gauge-calibrated', payload });
}
