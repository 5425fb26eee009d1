import { addDays, compareDays } from '../../calendar/day';
import type { GaugeEvidence } from '../../gauge/evidence';
import { ok, type Refusal, type Result, refuse } from '../../result';
import type { Calibration } from '../../shop/calibration';
import { CALIBRATED_ROLES } from '../../shop/vocabulary';
import type { Entry } from '../event';
import type { ToolRecord } from '../tool-record';
import { placed, standing } from './place';
import type { ToolStep } from './step';

/**
 * A calibration: passed until its next due day, or failed and so quarantined in the same entry. One found out of its
 * limits is quarantined too, though it may have been adjusted and passed since: what it accepted is to be looked at first.
 */
export const gaugeCalibrated: ToolStep<'gauge-calibrated'> = (tool, payload, entry) => {
  const known = gaugeAtHand(tool, 'cannot have been calibrated');
  if (!known.ok) return known;
  const seen = { ...tool, evidence: [...tool.evidence, calibrationEvidence(payload, entry)] };
  if (payload.result === 'fail')
    return ok({ ...placed(seen, 'quarantined', entry), dueOnDay: null, dropped: null });
  const dueOnDay = checkDueDay(tool, payload);
  if (!dueOnDay.ok) return dueOnDay;
  const kept = { ...seen, dueOnDay: dueOnDay.value, dropped: null };
  if (payload.asFound === 'out') return ok(placed(kept, 'quarantined', entry));
  const back = tool.state === 'calibration' || clearsKnock(tool);
  return ok(back ? placed(kept, 'in-crib', entry) : kept);
};

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
  const last = lastCalibration(tool);
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

function gaugeAtHand(tool: ToolRecord, cannot: string): Result<null, Refusal> {
  if (!CALIBRATED_ROLES.includes(tool.role))
    return refuse('role', `${tool.id} is not kept under calibration.`, 'toolId');
  if (tool.state === 'scrapped' || tool.state === 'lost')
    return refuse('state', `${tool.id} is ${standing(tool)}; it ${cannot}.`);
  return ok(null);
}

/** The next due day, which may be sooner than the gauge's interval says and never later. */
function checkDueDay(tool: ToolRecord, { dueOnDay, onDay }: Calibration): Result<string, Refusal> {
  if (dueOnDay === null) return refuse('due', 'A gauge that passed needs its next due day.', 'dueOnDay');
  if (dueOnDay <= onDay)
    return refuse('due', 'The next due day must lie after the day of calibration.', 'dueOnDay');
  const days = tool.interval?.intervalDays ?? null;
  const latest = days === null ? null : addDays(onDay, days);
  if (latest !== null && dueOnDay > latest)
    return refuse(
      'interval',
      `Its interval is ${days} days, so it is due by ${latest}. A longer one is set first, with a name and a reason.`,
      'dueOnDay',
    );
  return ok(dueOnDay);
}

function calibrationEvidence(calibration: Calibration, entry: Entry): GaugeEvidence {
  const { result, onDay } = calibration;
  return {
    ...{ entryId: entry.id, kind: 'calibration', onDay, atMs: entry.serverAtMs },
    asFound: calibration.asFound ?? (result === 'fail' ? 'out' : 'not-taken'),
    asLeft: result === 'pass' ? 'in' : 'out',
    ...{ qualifies: true, againstToolId: null, calibration, file: null },
  };
}

function lastCalibration(tool: ToolRecord): GaugeEvidence | undefined {
  return tool.evidence.findLast((one) => one.kind === 'calibration');
}

/** A laboratory found it out of limits: no check in the shop overrules that. */
function failedItsCalibration(tool: ToolRecord): boolean {
  return lastCalibration(tool)?.asLeft === 'out';
}

/** Set aside after a knock: a calibration that finds it good ends that. */
function clearsKnock(tool: ToolRecord): boolean {
  return tool.state === 'quarantined' && tool.dropped !== null;
}
