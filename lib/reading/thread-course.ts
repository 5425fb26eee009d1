import { FindingSchema } from './reading';

/** An entry about a die as its history holds it, oldest first; what was taken back is left out by the caller. */
export interface CourseEntry {
  readonly kind: string;
  readonly payload: Readonly<Record<string, unknown>>;
}

/** A thread of the die, measured: after how many ends it was cut, its pitch diameter and the limits it was held against. */
export interface CourseReading {
  readonly ends: number;
  readonly onDay: string;
  readonly pitchDiameterMm: number;
  readonly minMm: number;
  readonly maxMm: number;
}

/** A split die opened (bigger thread) or closed a touch, after so many ends. */
export interface CourseAdjustment {
  readonly ends: number;
  readonly onDay: string;
  readonly direction: 'opened' | 'closed';
}

/** The thread that a die cut, over its life. */
export interface ThreadCourse {
  readonly readings: readonly CourseReading[];
  readonly adjustments: readonly CourseAdjustment[];
  /** Ends cut by now. */
  readonly ends: number;
}

/** Follows a die's entries and counts the ends it had cut at each reading and each adjustment. Source: the shop's own log. */
export function threadCourse(entries: readonly CourseEntry[]): ThreadCourse {
  const readings: CourseReading[] = [];
  const adjustments: CourseAdjustment[] = [];
  let ends = endsBefore(entries);
  for (const { kind, payload } of entries) {
    const onDay = String(payload.onDay ?? '');
    if (kind === 'cut-logged') ends += Number(payload.ends);
    if (kind === 'die-adjusted')
      adjustments.push({ ends, onDay, direction: payload.direction === 'opened' ? 'opened' : 'closed' });
    if (kind !== 'edge-read') continue;
    const finding = FindingSchema.safeParse(payload.finding);
    if (!finding.success || finding.data.method !== 'pitch-diameter') continue;
    const { pitchDiameterMm, minMm, maxMm } = finding.data;
    readings.push({ ends, onDay, pitchDiameterMm, minMm, maxMm });
  }
  return { readings, adjustments, ends };
}

/** Ends that a die had cut before it was first entered here, where they were counted. */
function endsBefore(entries: readonly CourseEntry[]): number {
  const receipt = entries.find(({ kind }) => kind === 'tool-received');
  const opening = receipt?.payload.opening as { known?: string; ends?: number } | undefined;
  return opening?.known === 'counted' ? (opening.ends ?? 0) : 0;
}

/**
 * How fast the pitch diameter has grown, mm per end: the least-squares slope over the readings since the last adjustment, at least
 * three of them over different counts of ends; undefined otherwise. A course, not a forecast: the estimate of what is left stands
 * elsewhere. Source: formula (least squares).
 */
export function growthPerEndMm({ readings, adjustments }: ThreadCourse): number | undefined {
  const since = adjustments.at(-1)?.ends ?? Number.NEGATIVE_INFINITY;
  const used = readings.filter(({ ends }) => ends > since || since === Number.NEGATIVE_INFINITY);
  if (used.length < 3) return undefined;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [endsMean, sizeMean] = [mean(used.map(({ ends }) => ends)), mean(used.map((r) => r.pitchDiameterMm))];
  const spread = used.reduce((sum, { ends }) => sum + (ends - endsMean) ** 2, 0);
  if (spread === 0) return undefined;
  return used.reduce((sum, r) => sum + (r.ends - endsMean) * (r.pitchDiameterMm - sizeMean), 0) / spread;
}
