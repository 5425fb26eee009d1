import { dayText } from '@/app/_shared/format';
import { addDays } from '@/lib/calendar/day';
import { driftQuantile } from '@/lib/gauge/drift';
import { gaugeUnitLabel } from '@/lib/gauge/gauge-unit';
import type { IntervalReview } from '@/lib/gauge/interval-review';
import styles from './drift-chart.module.css';

const [WIDTH, HEIGHT] = [640, 260];
const PAD = { left: 46, right: 12, top: 28, bottom: 34 };
const STEPS = 24;
const AHEAD_DAYS = 540;

interface DriftChartProps {
  readonly review: Pick<IntervalReview, 'history' | 'posterior'>;
  readonly dueOnDay: string | null;
}

/**
 * Errors as found and as left against the days, between their limits, with the band in which the error is expected from
 * the last certificate on: 8 in 10 within it. The figures stand in the table of certificates.
 */
export function DriftChart({ review: { history, posterior }, dueOnDay }: DriftChartProps) {
  if (history === undefined || posterior === undefined) return null;
  const { points, lower, upper, halfWidth, firstDay, unit, feature } = history;
  const lastAt = points.at(-1)?.at ?? 0;
  const farAt = lastAt + AHEAD_DAYS;
  const errors = points.map(({ error }) => error);
  const high = Math.max(upper ?? 0, ...errors) + 0.25 * halfWidth;
  const low = Math.min(lower ?? 0, ...errors) - 0.25 * halfWidth;
  const x = (at: number) => PAD.left + ((WIDTH - PAD.left - PAD.right) * at) / farAt;
  const y = (error: number) => PAD.top + ((HEIGHT - PAD.top - PAD.bottom) * (high - error)) / (high - low);
  const clamp = (error: number) => Math.min(high, Math.max(low, error));
  const path = (p: number) =>
    Array.from({ length: STEPS + 1 }, (_, i) => {
      const at = lastAt + (AHEAD_DAYS * i) / STEPS;
      return `${x(at).toFixed(1)},${y(clamp(driftQuantile(posterior, at, p))).toFixed(1)}`;
    });
  const dayAt = (day: string) => (Date.parse(day) - Date.parse(firstDay)) / 86_400_000;
  return (
    <figure className={styles.chart}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" focusable="false">
        <polygon className={styles.band} points={[...path(0.9), ...path(0.1).toReversed()].join(' ')} />
        <polyline className={styles.middle} points={path(0.5).join(' ')} />
        {[upper, lower].map((limit) =>
          limit === null ? null : (
            <g key={limit}>
              <line
                className={styles.limit}
                x1={PAD.left}
                x2={WIDTH - PAD.right}
                y1={y(limit)}
                y2={y(limit)}
              />
              <text className={styles.label} x={PAD.left - 6} y={y(limit) + 4} textAnchor="end">
                {limit > 0 ? '+' : '−'}
                {Number(Math.abs(limit).toPrecision(3))}
              </text>
            </g>
          ),
        )}
        <line className={styles.axis} x1={PAD.left} x2={WIDTH - PAD.right} y1={y(0)} y2={y(0)} />
        <text className={styles.label} x={PAD.left - 6} y={y(0) + 4} textAnchor="end">
          0
        </text>
        {dueOnDay === null ? null : <Upright label="due" at={dayAt(dueOnDay)} {...{ x, farAt }} />}
        {points.map((point) => {
          const U = 2 * point.standardUncertainty;
          return (
            <g key={`${point.at} ${point.segment} ${point.error}`}>
              <line
                className={styles.whisker}
                x1={x(point.at)}
                x2={x(point.at)}
                y1={y(clamp(point.error - U))}
                y2={y(clamp(point.error + U))}
              />
              <circle className={styles.point} cx={x(point.at)} cy={y(point.error)} r="4.5" />
            </g>
          );
        })}
        <text className={styles.label} x={PAD.left} y={HEIGHT - 8}>
          {dayText(firstDay)}
        </text>
        <text className={styles.label} x={WIDTH - PAD.right} y={HEIGHT - 8} textAnchor="end">
          {dayText(addDays(firstDay, farAt))}
        </text>
      </svg>
      <figcaption>
        {feature}, error in {gaugeUnitLabel(unit)}. Points: certificates, with twice their standard
        uncertainty. Band: where it is expected from the last one on, 8 in 10. Broken lines: its limits.
      </figcaption>
    </figure>
  );
}

function Upright({
  label,
  at,
  x,
  farAt,
}: {
  readonly label: string;
  readonly at: number;
  readonly x: (at: number) => number;
  readonly farAt: number;
}) {
  if (at < 0 || at > farAt) return null;
  return (
    <g>
      <line className={styles.upright} x1={x(at)} x2={x(at)} y1={PAD.top} y2={HEIGHT - PAD.bottom} />
      <text className={styles.label} x={x(at)} y={PAD.top - 6} textAnchor="middle">
        {label}
      </text>
    </g>
  );
}
