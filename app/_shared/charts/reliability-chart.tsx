'use client';
/**
 * <ReliabilityChart title summary bins={[{ predicted, observed, low, high, count }]} />
 * What was said against what happened: a mark for each group of cases with its interval and its count, and the diagonal on
 * which a fair forecaster stands. Takes ready bins and computes nothing. The figures stand beside it in a table of the page.
 */
import {
  CartesianGrid,
  ComposedChart,
  ErrorBar,
  LabelList,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import styles from './chart.module.css';

interface Bin {
  readonly predicted: number;
  readonly observed: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly bins: readonly Bin[];
}

const AXIS = {
  stroke: 'var(--ink-3)',
  fontSize: 13,
  tickLine: false,
  type: 'number',
  domain: [0, 1],
  ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
  tickFormatter: (share: number) => `${Math.round(share * 100)}%`,
} as const;

export function ReliabilityChart({ title, summary, bins }: Props) {
  const data = bins.map((bin) => ({ ...bin, error: [bin.observed - bin.low, bin.high - bin.observed] }));
  return (
    <figure className={`${styles.chart} ${styles.narrow}`}>
      <figcaption>
        <strong>{title}</strong>
        <span className={styles.summary}>{summary}</span>
      </figcaption>
      <p className={styles.axis}>Share that finished</p>
      <div className={`${styles.plot} ${styles.square}`} aria-hidden="true">
        <ResponsiveContainer width="100%" height="100%">
          <ComposedChart
            data={data}
            margin={{ top: 12, right: 18, bottom: 0, left: -12 }}
            accessibilityLayer={false}
          >
            <CartesianGrid stroke="var(--line)" strokeWidth={0.75} />
            <XAxis {...AXIS} dataKey="predicted" />
            <YAxis {...AXIS} axisLine={false} />
            <ReferenceLine
              segment={[
                { x: 0, y: 0 },
                { x: 1, y: 1 },
              ]}
              stroke="var(--ink-3)"
              strokeDasharray="7 4"
            />
            <Scatter dataKey="observed" fill="var(--ink)" isAnimationActive={false}>
              <ErrorBar
                dataKey="error"
                direction="y"
                width={6}
                stroke="var(--ink)"
                strokeWidth={1.5}
                isAnimationActive={false}
              />
              <LabelList dataKey="count" position="right" offset={10} fill="var(--ink-2)" fontSize={13} />
            </Scatter>
          </ComposedChart>
        </ResponsiveContainer>
      </div>
      <p className={styles.axisAlong}>Chance that was said</p>
      <p className={styles.key}>
        <span>
          <span className={styles.keyMark} aria-hidden="true" /> what happened, with the number of cases; the
          bar holds nineteen times in twenty
        </span>
        <span>
          <span className={styles.keyDashed} aria-hidden="true" /> as it was said
        </span>
      </p>
    </figure>
  );
}
