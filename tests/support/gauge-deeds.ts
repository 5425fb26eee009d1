import fc from 'fast-check';
import { checkGauge, dropGauge, setGaugeInterval } from '@/db/commands/keep-gauge';
import { recordCalibration } from '@/db/commands/record-calibration';
import type { Env, Recorded } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import type { Result } from '@/lib/result';
import { RecordCalibrationInput } from '@/lib/shop/command-input';
import { CheckGaugeInput, DropGaugeInput, SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import { may } from './db';

/** What befalls a gauge in a random history: calibrated in full, checked, dropped, its interval set. */
export const gaugeDeed = fc.record({
  do: fc.constant('gauge' as const),
  toolId: fc.constantFrom('G-56-GO-1', 'G-56-GO-1', 'G-56-GO-1', 'D-56-01'),
  how: fc.constantFrom('certificate', 'check', 'check', 'drop', 'interval'),
  good: fc.boolean(),
  asFound: fc.constantFrom('in', 'in', 'out', 'not-taken'),
  days: fc.constantFrom(null, 100, 500),
  onDay: fc.constantFrom('2026-03-02', '2026-03-02', '2026-02-20', '2025-11-05'),
});
type GaugeDeed = typeof gaugeDeed extends fc.Arbitrary<infer D> ? D : never;

/** The deed as a command with its content fixed, to be sent as often as one likes. */
export function gaugeSend(
  deed: GaugeDeed,
  actor: Actor,
  entered: { entryId: string; deviceAtMs: number },
): (db: Db, env: Env) => Result<Recorded> {
  const { toolId, how, good, asFound, days, onDay } = deed;
  const about = { ...entered, toolId, onDay };
  const result = good ? 'pass' : 'fail';
  if (how === 'drop') {
    const input = DropGaugeInput.parse(about);
    return (db, env) => dropGauge(db, may('set-aside-gauge', actor), input, env);
  }
  if (how === 'check') {
    const input = CheckGaugeInput.parse({ ...about, result, qualifies: false, againstToolId: null });
    return (db, env) => checkGauge(db, may('check-gauge', actor), input, env);
  }
  if (how === 'interval') {
    const interval = { intervalDays: days, intervalEnds: 700, method: 'in-use', reason: 'a test' };
    const input = SetGaugeIntervalInput.parse({ ...about, ...interval });
    return (db, env) => setGaugeInterval(db, may('set-gauge-interval', actor), input, env);
  }
  const input = RecordCalibrationInput.parse({
    ...{ ...about, result, asFound, adjusted: !good, certificate: 'PM-1', laboratory: 'Plumbgate' },
    dueOnDay: good ? '2026-05-30' : null,
    features: [],
  });
  return (db, env) => recordCalibration(db, may('record-calibration', actor), input, env);
}
