import { ok, type Refusal, type Result, refuse } from '../result';
import type { Finding } from './reading';
import { DEFAULT_READING_SETTINGS, type ReadingSettings, type WornShare } from './reading-settings';

/**
 * What a finding says of the share of life used up: w and its standard error. A wear land against its limit; a pitch diameter
 * from where a new die cuts (a worn die cuts oversize) to the upper limit; rings and grades by the shop's table. Instrument
 * and course of wear add their variances. Kept within 0 … 1: beyond its limit an edge is at its limit.
 * Errors: refuses limits that leave no room for wear. Source: formula; figures from the settings.
 */
export function wornFraction(
  finding: Finding,
  settings: ReadingSettings = DEFAULT_READING_SETTINGS,
): Result<WornShare, Refusal> {
  switch (finding.method) {
    case 'flank-land':
      return ok(
        measured(finding.landMm / settings.landLimitMm, settings.landSdMm / settings.landLimitMm, settings),
      );
    case 'pitch-diameter':
      return fromPitchDiameter(finding, settings);
    case 'ring':
      return ok(fromRings(finding, settings));
    case 'grade':
      return ok(settings.grade[finding.grade]);
  }
}

function measured(worn: number, instrumentSd: number, { courseSd }: ReadingSettings): WornShare {
  return { worn: within(worn), sd: Math.hypot(instrumentSd, courseSd) };
}

function fromPitchDiameter(
  { pitchDiameterMm, minMm, maxMm, instrument }: Extract<Finding, { method: 'pitch-diameter' }>,
  settings: ReadingSettings,
): Result<WornShare, Refusal> {
  const room = (maxMm - minMm) * (1 - settings.newDieCutsAt);
  if (!(room > 0)) return refuse('limits', 'The upper limit must lie above the lower one.', 'maxMm');
  const worn = (pitchDiameterMm - (maxMm - room)) / room;
  return ok(measured(worn, settings.pitchDiameterSdMm[instrument] / room, settings));
}

/** A NOT GO ring that runs on speaks of a small thread and says more than a GO ring that runs on freely. */
function fromRings(
  { go, notGoTurns }: Extract<Finding, { method: 'ring' }>,
  { go: byFeel, notGoRunsOn }: ReadingSettings,
): WornShare {
  const small = notGoTurns !== null && notGoTurns >= notGoRunsOn.fromTurns && go === 'free';
  return small ? { worn: notGoRunsOn.worn, sd: notGoRunsOn.sd } : byFeel[go];
}

function within(share: number): number {
  return Math.min(1, Math.max(0, share));
}
