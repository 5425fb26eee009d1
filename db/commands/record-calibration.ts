import type { Permit } from '../../lib/access/permit';
import { decideCheck, hasDayCome } from '../../lib/gauge/decide-check';
import type { Entry } from '../../lib/ledger/event';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Calibration } from '../../lib/shop/calibration';
import type { RecordCalibration } from '../../lib/shop/command-input';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import type { Db } from '../open';
import { gaugeSettingsInForce } from '../queries/shop';
import { masterFacts } from './gauge/master-facts';
import { decideToolEntry, findToolId } from './tool-entry';

/**
 * Records a gauge's calibration: passed with its next due day, or failed and so quarantined in the same entry. What the
 * certificate does not state is left out of the entry. Figures without a rule of decision are kept with the shop’s.
 */
export function recordCalibration(
  db: Db,
  permit: Permit<'record-calibration'>,
  input: RecordCalibration,
  env: Env,
): Result<Recorded, Refusal> {
  const stated = calibrationOf(db, input);
  const isSame = (entry: Entry) => entry.kind === 'gauge-calibrated' && holdsAll(entry.payload, stated);
  return decideToolEntry(db, permit, input, env, isSame, (ledger, toolId) => {
    const checked = checkCalibration(ledger, toolId, stated, env);
    if (!checked.ok) return checked;
    const ruled = stated.features === undefined || stated.rule !== undefined ? {} : ruleOfShop(db);
    return ok({ kind: 'gauge-calibrated', payload: { ...stated, ...ruled, takesHold: 'by-day' } });
  });
}

function checkCalibration(
  ledger: Ledger,
  toolId: string,
  { onDay, againstToolId }: Calibration,
  env: Env,
): Result<unknown, Refusal> {
  if (!hasDayCome(onDay, env.nowMs)) return refuse('day', 'That day has not come yet.', 'onDay');
  const gauge = masterFacts(ledger, toolId);
  if (againstToolId === undefined || gauge === undefined) return ok(null);
  const master = masterFacts(ledger, againstToolId);
  return decideCheck(gauge, { onDay, againstToolId, qualifies: true }, master);
}

function ruleOfShop(db: Db): Pick<Calibration, 'rule'> {
  return { rule: gaugeSettingsInForce(db).decisionRule };
}

/** The content of the entry: only what was stated. */
function calibrationOf(db: Db, input: RecordCalibration): Calibration {
  const { onDay, result, dueOnDay, certificate, laboratory, asFound, adjusted, features, rule } = input;
  const { againstToolId: master = '' } = input;
  return {
    ...{ onDay, result, dueOnDay, certificate },
    ...(laboratory === undefined || laboratory === '' ? {} : { laboratory }),
    ...(asFound === undefined ? {} : { asFound }),
    ...(adjusted === undefined ? {} : { adjusted }),
    ...(features === undefined || features.length === 0 ? {} : { features }),
    ...(rule === undefined ? {} : { rule }),
    ...(master === '' ? {} : { againstToolId: findToolId(db, master) ?? master }),
  };
}
