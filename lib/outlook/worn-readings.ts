import type { EdgeReading, EdgeUse } from '../ledger/tool-record';
import type { ExposurePart } from '../life/observation';
import type { Finding, WornReading } from '../reading/reading';
import type { ReadingSettings } from '../reading/reading-settings';
import { wornFraction } from '../reading/worn-fraction';
import { fromMicro } from '../units/micro';

/** What an edge had cut, as the life fit counts it. */
export function exposureParts(use: readonly EdgeUse[]): ExposurePart[] {
  return use.map(({ materialId, dry, rework, exposureMicro }) => ({
    ...{ materialId, dry, rework },
    base: fromMicro(exposureMicro),
  }));
}

/** The readings of an edge as shares of a life used up, by the shop's own settings where it has any. One whose limits leave no room for wear says nothing. */
export function wornReadings(
  readings: readonly Pick<EdgeReading, 'finding' | 'use'>[],
  settings?: ReadingSettings,
): WornReading[] {
  return readings.flatMap(({ finding, use }) => {
    const share = wornShare(finding, settings);
    return share === undefined ? [] : [{ ...share, exposure: exposureParts(use) }];
  });
}

/** Share of a life that a finding says is used up, and how far it may be out. */
export function wornShare(
  finding: Finding,
  settings?: ReadingSettings,
): { worn: number; sd: number } | undefined {
  const read = wornFraction(finding, settings);
  return read.ok ? { worn: read.value.worn, sd: read.value.sd } : undefined;
}
