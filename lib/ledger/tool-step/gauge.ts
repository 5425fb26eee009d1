import { addDays, compareDays } from '../../calendar/day';
import { calibrationInForce } from '../../gauge/calibration-in-force';
import { ok, type Refusal, type Result, refuse } from '../../result';
import { CALIBRATED_ROLES } from '../../shop/vocabulary';
import type { ToolRecord } from '../tool-record';
import { placed, standing } from './place';
import type { ToolStep } from './step';

/** A check in the shop: failed, it is quarantined in the same entry; passed, it ends a quarantine that no laboratory set. */
export const gaugeChecked: ToolStep<'gauge-checked'> = (tool, payload, entry) => {
  const known = gaugeAtHand(tool, 'cannot have been checked');
  if (!known.ok) return known;
  if (payload.againstToolId === tool.id)
    return refuse('master', 'A gauge cannot be checked on itself.', 'againstToolId');
  const good = payload.result === 'pass' ? 'in' : 'out';
  const seen: ToolRecord = {
    ...tool,
    evidence: [
      ...tool.evidence,
      {
        ...{ entryId: entry.id, kind: 'interim', onDay: payload.onDay, atMs: entry.serverAtMs },
        ...{ asFound: good, asLeft: good, qualifies: payload.qualifies },
        ...{ againstToolId: payload.againstToolId, calibration: null, file: null },
      },
    ],
  };
  if (payload.result === 'fail') return ok(placed(seen, 'quarantined', entry));
  const clears = tool.state === 'quarantined' && payload.qualifies && !failedItsCalibration(tool);
  return ok(clears ? { ...placed(seen, 'in-crib', entry), dropped: null } : seen);
};

/** Dropped or knocked: set aside at once, whoever holds it, until a check or a calibration clears it. */
export const gaugeDropped: ToolStep<'gauge-dropped'> = (tool, { onDay }, entry) => {
  const known = gaugeAtHand(tool, 'cannot be set aside');
  if (!known.ok) return known;
  if (tool.state === 'quarantined') return refuse('state', `${tool.id} is set aside already.`);
  return ok({ ...placed(tool, 'quarantined', entry), dropped: { onDay, atMs: entry.serverAtMs } });
};

/**
 * How long a calibration is good for from now on. A shorter one takes hold at once: the due day moves up. A longer one
 * never moves the day that stands on the sticker; it takes hold at the next calibration.
 */
export const gaugeIntervalSet: ToolStep<'gauge-interval-set'> = (tool, interval) => {
  const known = gaugeAtHand(tool, 'needs no interval');
  if (!known.ok) return known;
  const last = calibrationInForce(tool.evidence);
  if (tool.dueOnDay === null || last === undefined || interval.intervalDays === null)
    return ok({ ...tool, interval });
  const sooner = addDays(last.onDay, interval.intervalDays);
  return ok({ ...tool, interval, dueOnDay: compareDays(sooner, tool.dueOnDay) < 0 ? sooner : tool.dueOnDay });
};

/** The certificate of a calibration that stands, filed beside it. */
export const gaugeCertificateFiled: ToolStep<'gauge-certificate-filed'> = (
  tool,
  { calibrationId, ...file },
) => {
  const meant = tool.evidence.find((one) => one.entryId === calibrationId && one.kind === 'calibration');
  if (meant === undefined)
    return refuse('calibration', `${tool.id} has no such calibration to file it with.`);
  return ok({ ...tool, evidence: tool.evidence.map((one) => (one === meant ? { ...one, file } : one)) });
};

/** Kept under calibration, and still the shop’s. */
export function gaugeAtHand(tool: ToolRecord, cannot: string): Result<null, Refusal> {
  if (!CALIBRATED_ROLES.includes(tool.role))
    return refuse('role', `${tool.id} is not kept under calibration.`, 'toolId');
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; it ${cannot}.`);
  return ok(null);
}

/** A laboratory found it out of limits: no check in the shop overrules that. */
function failedItsCalibration(tool: ToolRecord): boolean {
  return calibrationInForce(tool.evidence)?.asLeft === 'out';
}
