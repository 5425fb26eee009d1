/** <MarginWords reading={{ pitchDiameterMm, minMm, maxMm }} unit="in" />: what room a pitch diameter has left, in a sentence. */
import { type PitchMargin, pitchMargin } from '@/lib/thread/pitch-margin';
import { type LengthUnit, measureText } from '../format';

interface Reading {
  readonly pitchDiameterMm: number;
  readonly minMm: number;
  readonly maxMm: number;
}

export function MarginWords({ reading, unit }: { readonly reading: Reading; readonly unit: LengthUnit }) {
  return <p role="status">{marginSentence(pitchMargin(reading), unit)}</p>;
}

/** The last figure that `measureText` prints, and half of it, mm. */
const HALF_FIGURE_MM: Record<LengthUnit, number> = { in: 0.00127, mm: 0.0005 };

/** "0.0018 in left to the upper limit, 0.0020 in above the lower one." Within the last figure of a limit it is at the limit. */
export function marginSentence({ zone, toMaxMm, toMinMm }: PitchMargin, unit: LengthUnit): string {
  const text = (mm: number) => measureText(Math.abs(mm), unit);
  if (Math.abs(toMaxMm) < HALF_FIGURE_MM[unit])
    return 'At the upper limit: nothing is left. The rings decide.';
  if (Math.abs(toMinMm) < HALF_FIGURE_MM[unit])
    return 'At the lower limit: the thread is as thin as it may be.';
  if (zone === 'over') return `${text(toMaxMm)} over the upper limit: GO should refuse. The die cuts large.`;
  if (zone === 'under')
    return `${text(toMinMm)} under the lower limit: the thread is thin. Look at the die’s setting and the tube.`;
  return `${text(toMaxMm)} left to the upper limit, ${text(toMinMm)} above the lower one. The rings decide.`;
}
