import { addDays } from '../../calendar/day';
import { calibrationInForce } from '../../gauge/calibration-in-force';
import type { GaugeEvidence } from '../../gauge/evidence';
import { ok, type Refusal, type Result, refuse } from '../../result';
import type { Calibration } from '../../shop/calibration';
import type { Entry } from '../event';
import type { ToolRecord } from '../tool-record';
import { gaugeAtHand } from './gauge';
import { placed } from './place';
import type { ToolStep } from './step';

/**
 * A calibration: passed until its next due day, or failed and so quarantined in the same entry. One found out of its
 * limits is quarantined too, though it may have been adjusted and passed since: what it accepted is to be looked at first.
 * It takes hold by the day it was made: a certificate older than the one in force, filed late, moves neither the due day
 * nor the gauge, and one from before a knock does not clear the knock.
 */
export const gaugeCalibrated: ToolStep<'gauge-calibrated'> = (tool, payload, entry) => {
  const known = gaugeAtHand(tool, 'cannot have been calibrated');
  if (!known.ok) return known;
  const mine = calibrationEvidence(payload, entry);
  const seen = { ...tool, evidence: [...tool.evidence, mine] };
  const inForce = calibrationInForce(seen.evidence) === mine;
  const dueOnDay = payload.result === 'fail' ? ok(null) : checkDueDay(inForce ? tool : undefined, payload);
  if (!dueOnDay.ok) return dueOnDay;
  if (!inForce) return ok(seen);
  const kept = { ...seen, dueOnDay: dueOnDay.value };
  return ok(
    payload.takesHold === 'by-day' ? standingByDay(kept, payload, entry) : standing(kept, payload, entry),
  );
};

/** Where the gauge is after the calibration that is in force now. */
function standingByDay(tool: ToolRecord, { result, asFound, onDay }: Calibration, entry: Entry): ToolRecord {
  if (tool.dropped !== null && onDay < tool.dropped.onDay) return tool;
  if (result === 'fail' || asFound === 'out')
    return tool.state === 'quarantined' && tool.dropped === null ? tool : placed(tool, 'quarantined', entry);
  const back = tool.state === 'calibration' || clearsKnock(tool) || wasSetAsideByCalibration(tool);
  return back ? placed(tool, 'in-crib', entry) : { ...tool, dropped: null };
}

/** The same for entries from before certificates took hold by their day: they keep the meaning they had. */
function standing(tool: ToolRecord, { result, asFound }: Calibration, entry: Entry): ToolRecord {
  if (result === 'fail' || asFound === 'out') return placed(tool, 'quarantined', entry);
  const back = tool.state === 'calibration' || clearsKnock(tool);
  return back ? placed(tool, 'in-crib', entry) : { ...tool, dropped: null };
}

/** The next due day, which may be sooner than the gauge's interval says and never later. `tool`: whose interval binds it. */
function checkDueDay(
  tool: ToolRecord | undefined,
  { dueOnDay, onDay }: Calibration,
): Result<string, Refusal> {
  if (dueOnDay === null) return refuse('due', 'A gauge that passed needs its next due day.', 'dueOnDay');
  if (dueOnDay <= onDay)
    return refuse('due', 'The next due day must lie after the day of calibration.', 'dueOnDay');
  const days = tool?.interval?.intervalDays ?? null;
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
  const { result, onDay, againstToolId = null } = calibration;
  return {
    ...{ entryId: entry.id, kind: 'calibration', onDay, atMs: entry.serverAtMs },
    asFound: calibration.asFound ?? (result === 'fail' ? 'out' : 'not-taken'),
    asLeft: result === 'pass' ? 'in' : 'out',
    ...{ qualifies: true, againstToolId, calibration, file: null },
  };
}

/** Set aside after a knock: a calibration that finds it good ends that. */
function clearsKnock(tool: ToolRecord): boolean {
  return tool.state === 'quarantined' && tool.dropped !== null;
}

/** Set aside by nothing but an earlier certificate: a newer one that leaves it good ends that. */
function wasSetAsideByCalibration({ state, stateEntryId, evidence }: ToolRecord): boolean {
  return (
    state === 'quarantined' &&
    evidence.some(({ entryId, kind }) => kind === 'calibration' && entryId === stateEntryId)
  );
}
